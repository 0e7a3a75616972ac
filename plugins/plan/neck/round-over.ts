import type {BuildValues} from '../../build-file/schema.ts'
import {inch, radians} from '../../tables/units.ts'
import type {Cutter} from './cut.ts'
import type {HeadShape} from './head.ts'
import type {NeckModel} from './model.ts'

/** Where the back edges are rounded, in mm from the nut line, and how far a cutter takes to reach its full depth. */
export interface RoundOver {
  radiusMm: number
  fromMm: number
  toMm: number
  /** How far the cutter takes to full depth. */
  runInMm: number
}

/** The same, with the flat side left for the cutter's bearing. */
export interface Rounding extends RoundOver {
  flatMm: number
  bearingNeedsMm: number
  /** The largest radius that leaves enough. */
  largestMm: number
}

/** Flat side that a cutter's bearing needs to run on (mm): common practice, no source. */
const bearingNeedsMm = inch(1 / 8)

/**
 * Say where the back edges are rounded and how much flat side is left for the cutter's bearing where the neck is
 * thinnest, with the largest radius that leaves enough. All in mm.
 */
export function planRounding({roundOver}: NeckModel, cut: Cutter): Rounding | undefined {
  if (!roundOver) return undefined
  const {fromMm, toMm, radiusMm} = roundOver
  let sideMm = Number.POSITIVE_INFINITY
  let widthMm = Number.POSITIVE_INFINITY
  for (const at of [fromMm, 0, (fromMm + toMm) / 2, toMm]) {
    const section = at >= fromMm && at <= toMm ? cut(Math.max(at, 0)) : undefined
    if (!section) continue
    sideMm = Math.min(sideMm, section.thicknessMm)
    widthMm = Math.min(widthMm, section.widthMm)
  }
  if (!Number.isFinite(sideMm)) return undefined
  return {
    ...roundOver,
    flatMm: sideMm - radiusMm,
    bearingNeedsMm,
    largestMm: Math.min(sideMm - bearingNeedsMm, widthMm / 2),
  }
}

/** Radius of the bearing under a round-over cutter (mm): common practice, no source. */
const bearingMm = inch(1 / 4)

/**
 * Place the round-over. `scarf` is where the back turns into the head, t·tan(θ/2) from the ledge; `nut` the nut line;
 * `box` the box's edge. The cutter is round from above too, so at each end its profile rises over √(R² − b²), R being
 * the cutter's own radius and b its bearing's; the ends given are where nothing is cut any more.
 */
export function roundOver(
  {neck}: BuildValues,
  places: {head: HeadShape | undefined; boxAtMm: number | undefined; tailMm: number | undefined},
): RoundOver | undefined {
  const given = neck?.['round-over']
  if (!given?.radius) return undefined
  const {head, boxAtMm, tailMm} = places
  const scarfMm = head && -head.ledgeMm + head.sawnMm * Math.tan(radians(head.angleDeg) / 2)
  const words = {nut: 0, box: boxAtMm ?? tailMm, scarf: scarfMm ?? 0}
  const place = (at: typeof given.from) => (at && 'mm' in at ? at.mm : at && words[at.value])
  const fromMm = place(given.from) ?? words.scarf
  const toMm = place(given.to) ?? words.box
  if (toMm === undefined || !(toMm > fromMm)) return undefined
  const cutterMm = bearingMm + given.radius.mm
  return {radiusMm: given.radius.mm, fromMm, toMm, runInMm: Math.sqrt(cutterMm ** 2 - bearingMm ** 2)}
}

/** Give the radius that the back edges have at a station (mm), less near the ends as the cutter runs in. */
export function roundAtMm({radiusMm, fromMm, toMm, runInMm}: RoundOver, stationMm: number): number {
  const insideMm = Math.min(stationMm - fromMm, toMm - stationMm)
  if (insideMm <= 0) return 0
  const shortMm = Math.max(runInMm - insideMm, 0)
  return Math.max(Math.sqrt((bearingMm + radiusMm) ** 2 - shortMm ** 2) - bearingMm, 0)
}
