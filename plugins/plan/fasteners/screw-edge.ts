import type {Rectangle} from '../box/gap.ts'
import type {Fastener} from '../shape/holes.ts'
import {toMark} from '../to-mark.ts'
import type {Piece} from './screw-piece.ts'

/** What a screw keeps from an edge and from an end, times its shank: common practice, no source. */
const keeps = {edge: 1.5, end: 2} as const
const slackMm = 1e-6

export interface Spot {
  stationMm: number
  offMm: number
  /** The paths of the build file that say where it stands, and where the first is measured from (mm from the nut). */
  stationPath: string
  offPath: string
  originMm: number
  rulerMm: number
}

/**
 * Find the piece that a screw of this shank (mm) stands too near an edge or an end of, and the mark of the ruler that
 * would do. A wall that is driven into by its edge is taken at its middle. Undefined where it is well inside all.
 */
export function screwEdge(shankMm: number, pieces: readonly Piece[], spot: Spot): Fastener['edge'] {
  for (const {name, outline, isGrainAlong = true} of pieces) {
    if (!outline) continue
    const needs = {
      along: shankMm * (isGrainAlong ? keeps.end : keeps.edge),
      across: shankMm * (isGrainAlong ? keeps.edge : keeps.end),
    }
    const gaps = {
      along: Math.min(spot.stationMm - outline.fromMm, outline.toMm - spot.stationMm),
      across: Math.min(spot.offMm - outline.leftMm, outline.rightMm - spot.offMm),
    }
    const short = (['across', 'along'] as const).find((way) => gaps[way] < needs[way] - slackMm)
    if (!short) continue
    const wouldDo = nearestPlace(short, outline, needs[short], spot)
    return {
      piece: name,
      isEnd: (short === 'along') === isGrainAlong,
      gapMm: gaps[short],
      needsMm: needs[short],
      ...(wouldDo && {wouldDo}),
    }
  }
  return undefined
}

function nearestPlace(way: 'across' | 'along', outline: Rectangle, needsMm: number, spot: Spot) {
  const [low, high] = way === 'across' ? [outline.leftMm, outline.rightMm] : [outline.fromMm, outline.toMm]
  const origin = way === 'across' ? 0 : spot.originMm
  const least = toMark(low + needsMm - origin, spot.rulerMm, 'up')
  const most = toMark(high - needsMm - origin, spot.rulerMm, 'down')
  if (least > most) return undefined
  const now = (way === 'across' ? spot.offMm : spot.stationMm) - origin
  return {path: way === 'across' ? spot.offPath : spot.stationPath, mm: Math.min(Math.max(now, least), most)}
}
