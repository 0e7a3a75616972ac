import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A notch that the neck does not go into. */
export const notchTooNarrow: Check = {
  rule: 'notch-too-narrow',
  find: ({values}, {box, ...plan}) => {
    const neck = box?.neck
    const width = values.box?.notch?.width
    if (!neck || !width || width.mm >= neck.widthMm - plan.rulerMm - 1e-6) return []
    const expected = writeLength(neck.widthMm, plan, 'up')
    return [
      {
        at: 'box.notch.width',
        message: `a notch ${width.text} wide is too narrow for the neck, ${expected} wide where it meets the box`,
        expected: [expected],
        cause: 'neck.width',
      },
    ]
  },
}
