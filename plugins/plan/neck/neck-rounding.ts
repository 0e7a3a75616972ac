import type {NeckConcern} from './concern.ts'

/** Flat side that a cutter's bearing needs to run on (mm): common practice, no source. */
const bearingNeedsMm = 25.4 / 8

/**
 * Say where the back edges are rounded and how much flat side is left for the cutter's bearing where the neck is
 * thinnest, with the largest radius that leaves enough. All in mm.
 */
export const neckRounding: NeckConcern = ({model, cut}) => {
  const {roundOver} = model
  if (!roundOver) return {}
  const {fromMm, toMm, radiusMm} = roundOver
  let sideMm = Number.POSITIVE_INFINITY
  let widthMm = Number.POSITIVE_INFINITY
  for (const at of [fromMm, 0, (fromMm + toMm) / 2, toMm]) {
    const section = at >= fromMm && at <= toMm ? cut(Math.max(at, 0)) : undefined
    if (!section) continue
    sideMm = Math.min(sideMm, section.thicknessMm)
    widthMm = Math.min(widthMm, section.widthMm)
  }
  if (!Number.isFinite(sideMm)) return {}
  return {
    roundOver: {
      ...roundOver,
      flatMm: sideMm - radiusMm,
      bearingNeedsMm,
      largestMm: Math.min(sideMm - bearingNeedsMm, widthMm / 2),
    },
  }
}
