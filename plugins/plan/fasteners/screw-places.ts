import type {BuildValues} from '../../build-file/schema.ts'
import type {Box} from '../box/box.ts'
import {type BoxPlace, stationOf} from '../box/box-place.ts'
import type {Rectangle} from '../box/gap.ts'
import type {Conflict} from '../conflicts.ts'
import {type NeckTaper, neckWidthAt} from '../neck/taper.ts'
import {toMark, type WouldDo} from '../would-do.ts'
import type {Piece} from './screw-route.ts'

/** Where a screw stands: mm from the nut line and off the centre line. */
export interface ScrewPlace {
  /** The row of the build file it comes from. */
  of: string
  /** Where the build file says how far along it stands. */
  stationPath: string
  offPath: string
  stationMm: number
  offMm: number
  /** Below the box's top, where the file says so. */
  downMm?: number | undefined
  downPath?: string | undefined
  /** The file does not have it: a screw that would hold. */
  proposed?: true | undefined
}

/** More screws than this in one build are a slip of the pen: every place along is combined with every one across. */
const mostScrews = 500

/** Say how many screws the file's rows come to, where those are more than can be planned. */
export function screwsTooMany({screws = []}: BuildValues): {count: number; most: number} | undefined {
  const lengthOf = (list: readonly unknown[] | undefined) => list?.length || 1
  const count = screws.reduce(
    (sum, {at, along, off, down}) => sum + (at ?? along ?? []).length * lengthOf(off) * lengthOf(down),
    0,
  )
  return count > mostScrews ? {count, most: mostScrews} : undefined
}

/**
 * Spread the rows of screws out, in the file's order: every `at` (or `along`) with every `off` and every `down`, a screw
 * each. One without `off` stands on the centre line. Undefined where there are none, or too many.
 */
export function planScrewPlaces(values: BuildValues, place: BoxPlace | undefined): ScrewPlace[] | undefined {
  if (screwsTooMany(values)) return undefined
  const screws = (values.screws ?? []).flatMap((row, i) => {
    const of = `screws.${i + 1}`
    const key = row.at ? 'at' : 'along'
    return (row[key] ?? []).flatMap((length, k) => {
      const stationMm = stationOf({[key]: length}, place)
      if (stationMm === undefined) return []
      const stationPath = `${of}.${key}.${k + 1}`
      const offs = row.off?.map(({mm}, j) => ({offMm: mm, offPath: `${of}.off.${j + 1}`}))
      const downs = row.down?.map(({mm}, j) => ({downMm: mm, downPath: `${of}.down.${j + 1}`}))
      return (offs?.length ? offs : [{offMm: 0, offPath: `${of}.off`}]).flatMap((off) =>
        (downs?.length ? downs : [{}]).map((down) => ({
          of,
          stationPath,
          stationMm,
          ...off,
          ...down,
          proposed: length.proposed,
        })),
      )
    })
  })
  return screws.length ? screws : undefined
}

/** Tell whether a row of screws holds the top down on the box: through it, into a wall or a block. */
export function isForTop({through = [], into}: NonNullable<BuildValues['screws']>[number]): boolean {
  const passes = through.map(({value}) => value.toLowerCase())
  const holds = into?.value.toLowerCase() ?? ''
  return passes.includes('top') && !passes.includes('neck') && ['side', 'block'].includes(holds)
}

/** Say where a screw of the top would be free of a neck that lies on it, where that covers its head (mm). */
export function underNeck(
  {stationMm, offMm, offPath}: ScrewPlace,
  {box, taper, headMm, rulerMm}: {box: Box; taper: NeckTaper | undefined; headMm: number; rulerMm: number},
): {wouldDo: WouldDo} | undefined {
  const {atMm = 0, neck} = box
  const widthMm = taper && neckWidthAt(stationMm, taper)
  if (neck?.joins !== 'on top' || widthMm === undefined) return undefined
  const freeMm = widthMm / 2 + headMm
  const isOver = stationMm > atMm - headMm && stationMm < (neck.tailMm ?? Number.POSITIVE_INFINITY) + headMm
  if (!isOver || Math.abs(offMm) >= freeMm - slackMm) return undefined
  return {wouldDo: {path: offPath, mm: (offMm < 0 ? -1 : 1) * toMark(freeMm, rulerMm, 'up')}}
}

/** Say where a place along the neck is measured from in the build file (mm from the nut line): the nut, or the box. */
export const originMm = ({stationPath}: ScrewPlace, box: {atMm?: number | undefined}): number =>
  stationPath.includes('.along') ? (box.atMm ?? 0) : 0

/**
 * What a bored screw keeps from an edge and from an end, times its shank: the distances recommended for wood screws in
 * the commentary to the National Design Specification, from memory.
 */
export const screwKeeps = {edge: 2.5, end: 5} as const
const slackMm = 1e-6

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

/** Say where a screw that is to pass the top or the back would meet it, where it stands past an edge of the box (mm). */
export function offBox(
  place: ScrewPlace,
  through: readonly string[],
  {atMm, tailMm, outside}: Pick<Box, 'atMm' | 'tailMm' | 'outside'>,
  rulerMm: number,
): WouldDo | undefined {
  const {stationMm, stationPath} = place
  const isMet = !through.includes('top') && !through.includes('back')
  if (isMet || atMm === undefined || tailMm === undefined || !outside) return undefined
  if (stationMm >= atMm && stationMm <= tailMm) return undefined
  const fromMm = originMm(place, {atMm})
  const mm =
    stationMm < atMm
      ? toMark(atMm + 2 * outside.sidesMm - fromMm, rulerMm, 'up')
      : toMark(tailMm - 2 * outside.sidesMm - fromMm, rulerMm, 'down')
  return {path: stationPath, mm}
}

/** Propose the middle of the nearest block on the same line, for a screw that is to meet a block where none is. */
export function blockAstray(
  place: ScrewPlace,
  box: Pick<Box, 'atMm' | 'blocks'>,
): {wouldDo?: WouldDo | undefined} {
  const [nearest] = (box.blocks ?? [])
    .filter(({offMm, widthMm}) => Math.abs(place.offMm - offMm) <= widthMm / 2)
    .sort((a, b) => Math.abs(a.stationMm - place.stationMm) - Math.abs(b.stationMm - place.stationMm))
  if (!nearest) return {}
  return {wouldDo: {path: place.stationPath, mm: nearest.stationMm - originMm(place, box)}}
}
