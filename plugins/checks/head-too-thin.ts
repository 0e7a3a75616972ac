import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A head too thin for its tuners. */
export const headTooThin: Check = {
  rule: 'head-too-thin',
  find: (_, {neck, ...plan}) => {
    const {thicknessMm, leastMm} = neck?.head ?? {}
    if (thicknessMm === undefined || leastMm === undefined || thicknessMm >= leastMm - 1e-6) return []
    const least = writeLength(leastMm, plan, 'up')
    return [
      {
        at: 'head.thickness',
        message: `the head is ${writeLength(thicknessMm, plan)} thick, too thin for the tuners to be screwed and bushed; they need ${least}`,
        expected: [least],
      },
    ]
  },
}
