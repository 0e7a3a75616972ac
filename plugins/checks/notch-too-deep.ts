import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A notch for the neck that leaves too little of the wall above the back. */
export const notchTooDeep: Check = {
  rule: 'notch-too-deep',
  find: ({values}, {box, ...plan}) => {
    const notch = box?.neck?.notch
    if (!notch?.isGiven || notch.deepestMm === undefined || notch.depthMm <= notch.deepestMm + 1e-6) return []
    const deepest = notch.deepestMm > 0 ? writeLength(notch.deepestMm, plan, 'down') : undefined
    const left = (notch.leftMm ?? 0) <= 0 ? 'nothing' : `only ${writeLength(notch.leftMm!, plan, 'down')}`
    return [
      {
        at: 'box.notch.depth',
        message: `a notch ${values.box?.notch?.depth?.text} deep leaves ${left} of the wall above the back${deepest ? `; ${deepest} is the deepest that holds` : ''}`,
        ...(deepest && {expected: [deepest]}),
      },
    ]
  },
}
