import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A bridge line, or the foot of a bridge on the top, that lies past an edge of the box. */
export const bridgeOffBox: Check = {
  rule: 'bridge-off-box',
  find: (_, {box, bridge, ...plan}) => {
    if (box?.bridgeFraction === undefined) return []
    const {bridgeFraction, bridgeSeat: seat, wouldDo} = box
    const isPastHead = seat ? seat.fromHeadEdgeMm < -1e-6 : bridgeFraction < 0
    const isPastTail = seat ? seat.fromTailEdgeMm < -1e-6 : bridgeFraction > 1
    if (!isPastHead && !isPastTail) return []
    const text = wouldDo && writeLength(wouldDo.mm, plan)
    const what = seat ? 'the bridge’s foot' : 'the bridge line'
    return [
      {
        at: wouldDo?.path ?? box.placedBy ?? 'box.at',
        message: `${what}, ${writeLength(bridge!.stationMm, plan)} from the nut, lies past the box’s ${isPastHead ? 'head-side' : 'tail'} edge${text ? `; ${wouldDo.path} ${text} would do` : ''}`,
        ...(text && {expected: [text]}),
        ...(!seat && {severity: 'warning' as const}),
      },
    ]
  },
}
