import type {Lid} from '../plan/box/lid.ts'
import type {Neck} from '../plan/neck/neck.ts'
import * as words from '../words/findings/bridge.ts'
import {rule} from './rule.ts'

/** Write a box with a bridge on its top, and strings that push it. */
const pushed = (top: string) =>
  `scale: 24 1/4
strings: [D3 .030w, A3 .020w, D4 .013]
neck: {joins: through, width: 1 5/8, thickness: 1 1/4, above-top: 1/4, wood: sugar maple, length: 33 1/4}
head: {length: 6 1/4}
bridge: {on: top, foot: 3/8, length: 2, height: 9/16}
action: {nut: 1/8, octave: 7/32}
anchors: {at: 26 1/2, height: 0}
box: {length: 10, width: 8, depth: 2, at: 16, wood: eastern white pine, top: {${top}}}`

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
  'bridge-wider-than-box': rule({
    severity: 'fault',
    what: 'A bridge on the top that is longer across the strings than the box is wide.',
    why: 'Its ends would stand out over the sides, and nothing under them.',
    mend: 'Shorten the bridge, or give the box its real width.',
    passes: `${joined}\nbox: {length: 10, width: 8, depth: 2, at: 16}`,
    fails: `${joined.replace('foot', 'length: 9, foot')}\nbox: {length: 10, width: 8, depth: 2, at: 16}`,
    find: ({values}, {box}) => {
      const {overSidesMm = 0} = box?.bridgeSeat ?? {}
      if (overSidesMm <= 1e-6) return []
      const widthMm = box?.outside?.widthMm ?? 0
      return [{at: 'bridge.length', cause: 'box.width', length: values.bridge?.length?.text, widthMm}]
    },
    says: words.bridgeWiderThanBox,
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
  'top-too-weak': rule({
    severity: 'fault',
    what: 'A top that the bridge stands on, stressed by its push by more than its wood may carry.',
    why: 'It would crack along its grain, or break, under strings that stay on for years. The wood may carry a third of what breaks it, lying loose on the walls.',
    mend: 'Take a thicker top, a longer foot or a block glued under it, or a flatter angle behind the bridge.',
    passes: pushed('thickness: 1/8'),
    fails: pushed('thickness: 1/16'),
    find: (_, {box, neck}) => {
      const {tooWeak, stressMpa, mayCarryMpa, isAcrossGrain, pushN} = box?.lid ?? {}
      if (!tooWeak || stressMpa === undefined || mayCarryMpa === undefined) return []
      const room = thickestTop(box?.lid, neck)
      return [
        {at: 'box.top.thickness', ...tooWeak, ...room, stressMpa, mayCarryMpa, isAcrossGrain, pushN: pushN!},
      ]
    },
    says: words.topTooWeak,
  }),
  'top-sinks': rule({
    severity: 'warning',
    what: 'A top that sinks under the bridge, creep included, so far that the strings lose more than half of their height at the octave.',
    why: 'The strings come down with the bridge, and buzz. A load that stays doubles the sinking in time (Wood Handbook); half the height is common practice, no source.',
    mend: 'Take a thicker top, a longer foot or a block glued under it, or a flatter angle behind the bridge.',
    passes: pushed('thickness: 1/8'),
    fails: pushed('thickness: 1/16'),
    find: (_, {box, neck}) => {
      const {tooLimp, sinkAfterCreepMm = 0} = box?.lid ?? {}
      const room = thickestTop(box?.lid, neck)
      return tooLimp ? [{at: 'box.top.thickness', sinkAfterCreepMm, ...tooLimp, ...room}] : []
    },
    says: words.topSinks,
  }),
}

/** The thickest top that a neck under it, cut down for it, has wood to spare for; a neck that is too thin anyway says so itself. */
function thickestTop(lid: Lid | undefined, neck: Neck | undefined): {mostMm?: number} {
  const {spareMm = -1} = neck?.inside ?? {}
  return lid && spareMm >= 0 ? {mostMm: lid.thicknessMm + spareMm} : {}
}
