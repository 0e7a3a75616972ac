import type {Rectangle} from '../box/gap.ts'
import type {Conflict} from '../kit/conflicts.ts'
import {toMark} from '../kit/would-do.ts'
import type {Piece} from './screw-pieces.ts'
import {type ScrewPlace, slackMm} from './screw-places.ts'

/**
 * What a bored screw keeps from an edge and from an end, times its shank: the distances recommended for wood screws in
 * the commentary to the National Design Specification, from memory.
 */
export const screwKeeps = {edge: 2.5, end: 5} as const

interface Spot extends ScrewPlace {
  /** Where its place along the neck is measured from, mm from the nut line. */
  originMm: number
  rulerMm: number
}

/**
 * Find the piece that a screw of this shank (mm) stands too near an edge or an end of, and the mark of the ruler that
 * would do. A wall that is driven into by its edge is taken at its middle. Undefined where it is well inside all.
 */
export function screwEdge(shankMm: number, pieces: readonly Piece[], spot: Spot): Conflict | undefined {
  for (const {name, outline, isGrainAlong = true} of pieces) {
    if (!outline) continue
    const needs = {
      along: shankMm * (isGrainAlong ? screwKeeps.end : screwKeeps.edge),
      across: shankMm * (isGrainAlong ? screwKeeps.edge : screwKeeps.end),
    }
    const gaps = {
      along: Math.min(spot.stationMm - outline.fromMm, outline.toMm - spot.stationMm),
      across: Math.min(spot.offMm - outline.leftMm, outline.rightMm - spot.offMm),
    }
    const short = (['across', 'along'] as const).find((way) => gaps[way] < needs[way] - slackMm)
    if (!short) continue
    return {
      kind: 'screw-edge',
      of: spot.offPath,
      piece: name,
      isEnd: (short === 'along') === isGrainAlong,
      gapMm: gaps[short],
      needsMm: needs[short],
      wouldDo: nearestPlace(short, outline, needs[short], spot),
    }
  }
  return undefined
}

/** How a neck that ends at the box lies against its wall (mm). */
export interface NeckEnd {
  /** Where screws sit unless the file says so: the middle of the neck's thickness, below the box's top. */
  middleMm: number
  /** Half the neck's thickness. */
  halfMm: number
}

/**
 * Find whether a screw along the neck (shank in mm) stands too near the back or the playing face of the neck, and the
 * depth below the box's top that would do, where the file gives one.
 */
export function depthEdge(
  shankMm: number,
  {of, downMm, downPath, rulerMm}: Pick<Spot, 'of' | 'downMm' | 'downPath' | 'rulerMm'>,
  end: NeckEnd | undefined,
): Conflict | undefined {
  if (downMm === undefined || !end) return undefined
  const needsMm = screwKeeps.edge * shankMm
  const gapMm = end.halfMm - Math.abs(downMm - end.middleMm)
  if (gapMm >= needsMm - slackMm) return undefined
  const least = toMark(Math.max(0, end.middleMm - end.halfMm + needsMm), rulerMm, 'up')
  const most = toMark(end.middleMm + end.halfMm - needsMm, rulerMm, 'down')
  const mm = Math.min(Math.max(downMm, least), most)
  const wouldDo = downPath && least <= most ? {path: downPath, mm} : undefined
  return {kind: 'screw-edge', of: downPath ?? of, piece: 'neck', isEnd: false, gapMm, needsMm, wouldDo}
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
