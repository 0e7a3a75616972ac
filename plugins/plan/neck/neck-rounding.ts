import type {NeckConcern} from './concern.ts'
import {sectionAt} from './section-at.ts'

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
  const sections = [fromMm, 0, (fromMm + toMm) / 2, toMm].flatMap((at) =>
    at >= fromMm && at <= toMm ? (sectionAt(model, Math.max(at, 0), cut) ?? []) : [],
  )
  if (sections.length === 0) return {}
  const sideMm = Math.min(...sections.map(({thicknessMm}) => thicknessMm))
  const widthMm = Math.min(...sections.map((section) => section.widthMm))
  return {
    roundOver: {
      ...roundOver,
      flatMm: sideMm - radiusMm,
      bearingNeedsMm,
      largestMm: Math.min(sideMm - bearingNeedsMm, widthMm / 2),
    },
  }
}
