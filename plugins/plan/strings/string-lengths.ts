import {pastThePostMm} from '../../tables/string-gauges.ts'
import type {PlanPart} from '../part.ts'

/**
 * Say how long each string has to be (mm): from its anchor over bridge and nut to its post, and what it needs past
 * that. Where posts or anchors are not placed yet, from the ends of the neck, which is no less. Absent without either.
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
      return {...string, lengthNeededMm: anchorMm - postMm + pastThePostMm}
    }),
  }
}
