import {packetLengths, pastThePostMm} from '../../tables/string-gauges.ts'
import type {PlanPart} from '../part.ts'

/**
 * Say how long each string has to be (mm): from its anchor over bridge and nut to its post, and what it needs past
 * that; and what a packet of its gauge holds. Where posts or anchors are not placed yet, from the ends of the neck,
 * which is no less. Absent without either.
 */
export const stringLengths: PlanPart = (_, soFar) => {
  const {strings, anchors, tuners, neck} = soFar
  if (!strings) return {}
  const budget = neck?.budget
  const tailMm = budget && budget.scaleMm + budget.tailMm
  return {
    strings: strings.map((string, i) => {
      const anchorMm = anchors?.[i]?.stationMm ?? tailMm
      const postMm = tuners?.[i]?.stationMm ?? (budget && -budget.headMm)
      if (anchorMm === undefined || postMm === undefined) return string
      const lengthNeededMm = anchorMm - postMm + pastThePostMm
      const packetMm = packetOf(string.gaugeMm)
      return {
        ...string,
        lengthNeededMm,
        packetMm,
        anchorWithinMm: anchorMm - Math.max(0, lengthNeededMm - packetMm),
      }
    }),
  }
}

/** How long the string of a packet is, in mm, by its gauge. */
function packetOf(gaugeMm = 0): number {
  const {mm, heavyFromIn, heavyMm} = packetLengths
  return gaugeMm >= heavyFromIn * 25.4 - 1e-9 ? heavyMm : mm
}
