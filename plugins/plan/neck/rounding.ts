import {inch} from '../../tables/units.ts'
import type {Cutter} from '../neck-shape/cut.ts'
import type {NeckModel} from '../neck-shape/model.ts'
import type {RoundOver} from '../neck-shape/round-over.ts'

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
