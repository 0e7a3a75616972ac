import {packetLengths, pastThePostMm} from '../tables/strings.ts'
import type {PlanPart} from './part.ts'
import {stationOf} from './station-of.ts'

/**
 * Say how long each string has to be (mm): from its anchor over bridge and nut to its post, and what it needs past
 * that. Where posts or anchors are not placed yet, from the ends of the neck, which is no less; only where both are
 * placed, what a packet of its gauge holds, and how far off its anchor may lie. Absent without either.
 */
export const stringLengths: PlanPart = ({values}, soFar) => {
  const {strings, tuners, neck} = soFar
  if (!strings) return {}
  const budget = neck?.budget
  const anchoredMm = stationOf(values.anchors ?? {}, soFar.box)
  const anchorMm = anchoredMm ?? (budget && budget.scaleMm + budget.tailMm)
  return {
    strings: strings.map((string, i) => {
      const post = tuners?.[i]
      const postMm = post?.stationMm ?? (budget && -budget.headMm)
      if (anchorMm === undefined || postMm === undefined) return string
      const lengthNeededMm = anchorMm - postMm + pastThePostMm
      if (!post || anchoredMm === undefined) return {...string, lengthNeededMm}
      const packetMm = packetOf(string.gaugeMm)
      const anchorWithinMm = anchoredMm - Math.max(0, lengthNeededMm - packetMm)
      return {...string, lengthNeededMm, packetMm, anchorWithinMm}
    }),
  }
}

/** How long the string of a packet is, in mm, by its gauge. */
function packetOf(gaugeMm = 0): number {
  const {mm, heavyFromIn, heavyMm} = packetLengths
  return gaugeMm >= heavyFromIn * 25.4 - 1e-9 ? heavyMm : mm
}
