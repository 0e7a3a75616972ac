import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Box} from '../box/box.ts'
import {type BoxPlace, stationOf} from '../kit/box-place.ts'
import {toMark, type WouldDo} from '../kit/would-do.ts'
import {type NeckTaper, neckWidthAt} from '../neck-shape/taper.ts'

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

export const slackMm = 1e-6
