import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A round-over larger than the neck, or one that leaves the cutter's bearing nothing to run on. */
export const roundOverTooLarge: Check = {
  rule: 'round-over-too-large',
  find: (_, {neck, ...plan}) => {
    const {radiusMm, flatMm, largestMm, bearingNeedsMm} = neck?.roundOver ?? {}
    if (radiusMm === undefined || largestMm === undefined || radiusMm <= largestMm + 1e-6) return []
    const found =
      flatMm! <= 0
        ? 'is larger than the neck is thick'
        : flatMm! >= bearingNeedsMm! - 1e-6
          ? 'is more than half the neck’s width'
          : `leaves ${writeLength(flatMm!, plan, 'down')} of flat side, and the cutter’s bearing needs ${writeLength(bearingNeedsMm!, plan, 'up')} to run on`
    const wouldDo = largestMm >= plan.rulerMm ? writeLength(largestMm, plan, 'down') : undefined
    return [
      {
        at: 'neck.round-over.radius',
        message: `a round-over of ${writeLength(radiusMm, plan)} ${found}${wouldDo ? `; ${wouldDo} is the largest that would do` : ''}`,
        ...(wouldDo && {expected: [wouldDo]}),
      },
    ]
  },
}
