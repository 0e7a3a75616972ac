import type {Box} from '../box/box.ts'
import type {Rectangle} from '../box/gap.ts'
import type {PlanPart} from '../part.ts'
import {stationOf} from '../station-of.ts'
import {toMark} from '../would-do.ts'
import type {Fastener} from './fasteners.ts'
import type {Piece} from './screw-route.ts'

export interface ScrewPlace {
  /** The row of the build file it comes from. */
  of: string
  /** Where the build file says how far along it stands. */
  stationPath: string
  offPath: string
  stationMm: number
  offMm: number
}

/**
 * Spread the rows of screws out, in the file's order: every `at` (or `along`) with every `off`, a screw each, in mm
 * from the nut line and off the centre line. One without `off` stands on the centre line.
 */
export const screwPlaces: PlanPart = ({values}, soFar) => {
  const screws = (values.screws ?? []).flatMap((row, i) => {
    const of = `screws.${i + 1}`
    const key = row.at ? 'at' : 'along'
    return (row[key] ?? []).flatMap((place, k) => {
      const stationMm = stationOf({[key]: place}, soFar.box)
      if (stationMm === undefined) return []
      const stationPath = `${of}.${key}.${k + 1}`
      if (!row.off?.length) return [{of, stationPath, offPath: `${of}.off`, stationMm, offMm: 0}]
      return row.off.map((off, j) => ({
        of,
        stationPath,
        offPath: `${of}.off.${j + 1}`,
        stationMm,
        offMm: off.mm,
      }))
    })
  })
  return screws.length ? {screws} : {}
}

/** What a screw keeps from an edge and from an end, times its shank: common practice, no source. */
const keeps = {edge: 1.5, end: 2} as const
const slackMm = 1e-6

interface Spot {
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

/** Say where a screw that is to pass the top or the back would meet it, where it stands past an edge of the box (mm). */
export function offBox(
  {stationMm, stationPath}: ScrewPlace,
  through: readonly string[],
  {atMm, tailMm, outside}: Box = {},
  rulerMm: number,
): Pick<Fastener, 'offBox'> {
  const isMet = !through.includes('top') && !through.includes('back')
  if (isMet || atMm === undefined || tailMm === undefined || !outside) return {}
  if (stationMm >= atMm && stationMm <= tailMm) return {}
  const originMm = stationPath.includes('.along') ? atMm : 0
  const mm =
    stationMm < atMm
      ? toMark(atMm + 2 * outside.sidesMm - originMm, rulerMm, 'up')
      : toMark(tailMm - 2 * outside.sidesMm - originMm, rulerMm, 'down')
  return {offBox: {path: stationPath, mm}}
}

/** Propose the middle of the nearest block on the same line, for a screw that is to meet a block where none is. */
export function blockAstray(place: ScrewPlace, box: Box | undefined): NonNullable<Fastener['astray']> {
  const beside = (box?.blocks ?? []).filter(
    ({offMm, widthMm}) => Math.abs(place.offMm - offMm) <= widthMm / 2,
  )
  const [nearest] = [...beside].sort(
    (a, b) => Math.abs(a.stationMm - place.stationMm) - Math.abs(b.stationMm - place.stationMm),
  )
  if (!nearest) return {}
  const originMm = place.stationPath.includes('.along') ? (box?.atMm ?? 0) : 0
  return {wouldDo: {path: place.stationPath, mm: nearest.stationMm - originMm}}
}
