import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A bridge on the top with its foot so near the tail wall that the top cannot move under it. */
export const bridgeNearTail: Check = {
  rule: 'bridge-near-tail',
  find: (_, {box, ...plan}) => {
    const seat = box?.bridgeSeat
    if (!seat || seat.fromTailEdgeMm < 0 || seat.fromHeadEdgeMm < 0) return []
    if (seat.fromTailWallMm >= seat.leastFromTailWallMm - 1e-6) return []
    const text = box.wouldDo && writeLength(box.wouldDo.mm, plan)
    const where =
      seat.fromTailWallMm <= 0
        ? 'the bridge’s foot stands on the tail wall'
        : `the bridge’s foot is ${writeLength(seat.fromTailWallMm, plan, 'down')} from the tail wall`
    return [
      {
        at: box.wouldDo?.path ?? box.placedBy ?? 'box.at',
        message: `${where}, where the top is too stiff to sound; ${text ? `${box.wouldDo!.path} ${text} leaves it ${writeLength(seat.leastFromTailWallMm, plan)}` : `it needs ${writeLength(seat.leastFromTailWallMm, plan)}`}`,
        ...(text && {expected: [text]}),
      },
    ]
  },
}
