import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch, radians} from '../../tables/units.ts'
import type {HeadShape} from './head-shape.ts'

/** Where the back edges are rounded, in mm from the nut line, and how far a cutter takes to reach its full depth. */
export interface RoundOver {
  radiusMm: number
  fromMm: number
  toMm: number
  /** How far the cutter takes to full depth. */
  runInMm: number
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
