import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A head too thick for its tuners' posts to come through. */
export const headTooThick: Check = {
  rule: 'head-too-thick',
  find: (_, {neck, ...plan}) => {
    const {thicknessMm, mostMm} = neck?.head ?? {}
    if (thicknessMm === undefined || mostMm === undefined || thicknessMm <= mostMm + 1e-6) return []
    const most = writeLength(mostMm, plan, 'down')
    return [
      {
        at: 'head.thickness',
        message: `the head is ${writeLength(thicknessMm, plan)} thick, too thick for the tuners’ posts to come through; ${most} is the most`,
        expected: [most],
      },
    ]
  },
}
