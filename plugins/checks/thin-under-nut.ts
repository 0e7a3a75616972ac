import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** Too little wood under the nut's groove. */
export const thinUnderNut: Check = {
  rule: 'thin-under-nut',
  find: (_, {neck, ...plan}) => {
    const {nutSeat} = neck ?? {}
    if (!nutSeat || nutSeat.leftMm >= nutSeat.leastMm - 1e-6) return []
    const least = writeLength(nutSeat.leastMm, plan, 'up')
    const deepest =
      nutSeat.deepestMm >= plan.rulerMm ? writeLength(nutSeat.deepestMm, plan, 'down') : undefined
    return [
      {
        at: 'nut.groove',
        message: `the nut’s groove leaves ${writeLength(nutSeat.leftMm, plan, 'down')} of wood under it, where ${least} keeps the neck from breaking there; ${deepest ? `a groove ${deepest} deep would do` : 'make the neck thicker'}`,
        ...(deepest && {expected: [deepest]}),
      },
    ]
  },
}
