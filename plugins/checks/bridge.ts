import {writeLength} from '../build-file/quantities/write-length.ts'
import {rule} from './rule.ts'

export const bridgeRules = {
  'bridge-off-box': rule({
    severity: 'fault',
    what: 'A bridge that stands past an edge of the box.',
    why: 'A bridge on the top needs the top under it; one on the neck drives the top only where it lies over it.',
    mend: 'Move the box, or change the scale length.',
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
  }),
  'bridge-near-tail': rule({
    severity: 'warning',
    what: 'A bridge on the top with its foot within 3/4 in of the inside of the tail wall.',
    why: 'Near its edge the top is held still and gives little sound. Common practice, no source.',
    mend: 'Move the box towards the tail.',
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
  }),
  'bridge-place': rule({
    severity: 'remark',
    what: 'A bridge on the top that stands outside 60 to 88 % of the box.',
    why: 'Further towards the middle the top sinks more, further back it sounds less. Common practice, no source.',
    mend: 'Move the box, if its sound matters more than its looks.',
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
  }),
}
