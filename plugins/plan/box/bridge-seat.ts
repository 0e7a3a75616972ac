import type {PlanPart} from '../part.ts'
import {toMark} from '../would-do.ts'
import type {Box} from './box.ts'

export interface BridgeSeat {
  footMm: number
  lengthMm: number
  /** From its foot to the inside of the tail wall. */
  fromTailWallMm: number
  /** From the box’s head-side edge to its foot. */
  fromHeadEdgeMm: number
  /** From its foot to the box’s tail edge. */
  fromTailEdgeMm: number
  leastFromTailWallMm: number
  /** The part of the box where bridges on the top sound best. */
  belongs: {
    from: number
    to: number
  }
}

/** What a bridge on the top keeps from the tail wall (mm), and the part of the box it belongs in: common practice, no source. */
const keepsMm = (25.4 * 3) / 4
const belongs = {from: 0.6, to: 0.88} as const

/**
 * Say where the foot of a bridge that stands on the top comes to stand, in mm: from the inside of the tail wall, and
 * from the box's two edges; and where the box would have to lie for the bridge to stand well. A bridge without a foot's
 * length counts as its line, one without a width as wide as its strings.
 */
export const bridgeSeat: PlanPart = ({values, rulerMm}, soFar) => {
  const {box, bridge} = soFar
  if (!bridge || box?.atMm === undefined || box.tailMm === undefined || !box.outside) return {}
  const footMm = values.bridge?.foot?.mm ?? 0
  const fromTailEdgeMm = box.tailMm - (bridge.stationMm + footMm / 2)
  const isOnTop = bridge.on === 'top'
  const least = isOnTop ? box.outside.sidesMm + keepsMm + footMm / 2 : 0
  const wouldDo = betterPlace(box, bridge.stationMm, least, rulerMm)
  return {
    box: {
      ...box,
      ...(wouldDo && {wouldDo}),
      ...(isOnTop && {
        bridgeSeat: {
          footMm,
          lengthMm: values.bridge?.length?.mm ?? values.spacing?.bridge?.mm ?? 0,
          fromTailEdgeMm,
          fromTailWallMm: fromTailEdgeMm - box.outside.sidesMm,
          fromHeadEdgeMm: bridge.stationMm - footMm / 2 - box.atMm,
          leastFromTailWallMm: keepsMm,
          belongs,
        },
      }),
    },
  }
}

/** The nearest place of the box, to a mark of the ruler, with the bridge line between 60 and 88 % of it and clear of the wall. */
function betterPlace(box: Box, bridgeMm: number, leastMm: number, rulerMm: number): Box['wouldDo'] {
  const lengthMm = box.outside!.lengthMm
  const now = box.tailMm! - bridgeMm
  const least = Math.max((1 - belongs.to) * lengthMm, leastMm)
  const most = (1 - belongs.from) * lengthMm
  if (least > most || (now >= least && now <= most)) return undefined
  const [fromTailMm, side] = now < least ? ([least, 'up'] as const) : ([most, 'down'] as const)
  if (box.placedBy === 'bridge.from-tail') return {path: box.placedBy, mm: toMark(fromTailMm, rulerMm, side)}
  return {path: 'box.at', mm: toMark(bridgeMm + fromTailMm - lengthMm, rulerMm, side)}
}
