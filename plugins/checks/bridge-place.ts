import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A bridge on the top that stands outside 60 to 88 % of the box. */
export const bridgePlace: Check = {
  rule: 'bridge-place',
  find: (_, {box, ...plan}) => {
    const {bridgeFraction, bridgeSeat: seat, wouldDo} = box ?? {}
    if (bridgeFraction === undefined || !seat) return []
    if (seat.fromTailWallMm < seat.leastFromTailWallMm - 1e-6 || seat.fromHeadEdgeMm < 0) return []
    const {from, to} = seat.belongs
    if (bridgeFraction >= from - 1e-9 && bridgeFraction <= to + 1e-9) return []
    const text = wouldDo && writeLength(wouldDo.mm, plan)
    return [
      {
        at: wouldDo?.path ?? box?.placedBy ?? 'box.at',
        message: `the bridge stands ${Math.round(bridgeFraction * 100)} % of the way along the box; most sound best between ${from * 100} and ${to * 100} %${text ? `: ${wouldDo.path} ${text} would do` : ''}`,
        ...(text && {expected: [text]}),
      },
    ]
  },
}
