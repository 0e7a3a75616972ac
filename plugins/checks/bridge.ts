import * as words from '../words/findings/bridge.ts'
import {rule} from './rule.ts'

const joined = 'neck: {joins: through, thickness: 1 1/4}\nbridge: {on: top, foot: 3/8}'

export const bridgeRules = {
  'bridge-off-box': rule({
    severity: 'fault',
    what: 'A bridge that stands past an edge of the box.',
    why: 'A bridge on the top needs the top under it; one on the neck drives the top only where it lies over it.',
    mend: 'Move the box, or change the scale length.',
    passes: `${joined}\nbox: {length: 10, width: 8, depth: 2, at: 16}`,
    fails: `${joined}\nbox: {length: 10, width: 8, depth: 2, at: 14 1/4}`,
    find: (_, {box, bridge}) => {
      if (box?.bridgeFraction === undefined) return []
      const {bridgeFraction, bridgeSeat: seat, wouldDo} = box
      const isPastHead = seat ? seat.fromHeadEdgeMm < -1e-6 : bridgeFraction < 0
      const isPastTail = seat ? seat.fromTailEdgeMm < -1e-6 : bridgeFraction > 1
      if (!isPastHead && !isPastTail) return []
      return [
        {
          at: wouldDo?.path ?? box.placedBy ?? 'box.at',
          severity: seat ? undefined : 'warning',
          stationMm: bridge!.stationMm,
          isOnTop: seat !== undefined,
          isPastHead,
          wouldDo,
        },
      ]
    },
    says: words.bridgeOffBox,
  }),
  'bridge-near-tail': rule({
    severity: 'warning',
    what: 'A bridge on the top with its foot within 3/4 in of the inside of the tail wall.',
    why: 'Near its edge the top is held still and gives little sound. Common practice, no source.',
    mend: 'Move the box towards the tail.',
    passes: `${joined}\nbox: {length: 10, width: 8, depth: 2, at: 16}`,
    fails: `${joined}\nbox: {length: 10, width: 8, depth: 2, at: 15 1/4}`,
    find: (_, {box}) => {
      const seat = box?.bridgeSeat
      if (!seat || seat.fromTailEdgeMm < 0 || seat.fromHeadEdgeMm < 0) return []
      const {fromTailWallMm, leastFromTailWallMm} = seat
      if (fromTailWallMm >= leastFromTailWallMm - 1e-6) return []
      const at = box.wouldDo?.path ?? box.placedBy ?? 'box.at'
      return [{at, fromTailWallMm, leastFromTailWallMm, wouldDo: box.wouldDo}]
    },
    says: words.bridgeNearTail,
  }),
  'bridge-place': rule({
    severity: 'remark',
    what: 'A bridge on the top that stands outside 60 to 88 % of the box.',
    why: 'Further towards the middle the top sinks more, further back it sounds less. Common practice, no source.',
    mend: 'Move the box, if its sound matters more than its looks.',
    passes: `${joined}\nbox: {length: 10, width: 8, depth: 2, at: 18}`,
    fails: `${joined}\nbox: {length: 10, width: 8, depth: 2, at: 19}`,
    find: (_, {box}) => {
      const {bridgeFraction: fraction, bridgeSeat: seat, wouldDo} = box ?? {}
      if (fraction === undefined || !seat) return []
      if (seat.fromTailWallMm < seat.leastFromTailWallMm - 1e-6 || seat.fromHeadEdgeMm < 0) return []
      const {belongs} = seat
      if (fraction >= belongs.from - 1e-9 && fraction <= belongs.to + 1e-9) return []
      return [{at: wouldDo?.path ?? box?.placedBy ?? 'box.at', fraction, belongs, wouldDo}]
    },
    says: words.bridgePlace,
  }),
}
