import type {BuildValues} from '../../build-file/schema/schema.ts'
import {packetLengths, pastThePostMm} from '../../tables/strings.ts'
import {inchMm} from '../../tables/units.ts'
import {type BoxPlace, stationOf} from '../kit/box-place.ts'
import type {Budget} from '../neck-shape/budget.ts'
import {stretchMm} from './string-facts.ts'
import type {StringPlan} from './strings.ts'
import type {Placed} from './tuners.ts'

interface Ends {
  tuners: readonly Placed[] | undefined
  place: BoxPlace | undefined
  budget: Budget | undefined
}

/**
 * Say how long each string has to be: from its anchor over bridge and nut to its post, and what it needs past that.
 * Where posts or anchors are not placed yet, from the ends of the neck, which is no less; only where both are placed,
 * what a packet of its gauge holds, how far off its anchor may lie, and how often its tuner turns to pitch. Nothing is
 * added without either.
 */
export function withLengths(
  strings: readonly StringPlan[],
  values: BuildValues,
  {tuners, place, budget}: Ends,
): StringPlan[] {
  const anchoredMm = stationOf(values.anchors ?? {}, place)
  const anchorMm = anchoredMm ?? (budget && budget.scaleMm + budget.tailMm)
  return strings.map((string, i) => {
    const post = tuners?.[i]
    const postMm = post?.stationMm ?? (budget && -budget.headMm)
    if (anchorMm === undefined || postMm === undefined) return string
    const lengthNeededMm = anchorMm - postMm + pastThePostMm
    if (!post || anchoredMm === undefined) return {...string, lengthNeededMm}
    const wholeMm = anchoredMm - postMm
    const packetMm = packetOf(string.gaugeMm)
    const anchorWithinMm = anchoredMm - Math.max(0, lengthNeededMm - packetMm)
    const buttonTurns = turnsToPitch(string, wholeMm, values.tuners)
    const stretchWholeMm = stretchOver(string, wholeMm)
    return {...string, lengthNeededMm, wholeMm, stretchWholeMm, packetMm, anchorWithinMm, buttonTurns}
  })
}

/**
 * Say how often a tuner's button turns from where its string (so many mm from anchor to post) lies straight to its
 * pitch: the string's stretch over the length that one turn of the post winds up, times the gear's ratio. The post
 * counts as thick as its hole, and the string winds on at its own middle; friction at nut and bridge is left out.
 * Source: Hooke's law; geometry.
 */
export function turnsToPitch(
  string: StringPlan,
  lengthMm: number,
  tuners: BuildValues['tuners'],
): number | undefined {
  const {ratio, 'post-hole': post} = tuners ?? {}
  const stretch = stretchOver(string, lengthMm)
  if (!ratio || !post || stretch === undefined) return undefined
  return (ratio.value * stretch) / (Math.PI * (post.mm + (string.gaugeMm ?? 0)))
}

/** Give how far a string stretches at pitch over a length, both in mm; undefined where pull or stiffness is not known. */
function stretchOver({tensionN, stiffnessMpa, sectionMm}: StringPlan, lengthMm: number): number | undefined {
  if (tensionN === undefined || stiffnessMpa === undefined || sectionMm === undefined) return undefined
  return stretchMm({stiffnessMpa, sectionMm}, tensionN, lengthMm)
}

/** How long the string of a packet is, in mm, by its gauge. */
export function packetOf(gaugeMm = 0): number {
  const {mm, heavyFromIn, heavyMm} = packetLengths
  return gaugeMm >= heavyFromIn * inchMm - 1e-9 ? heavyMm : mm
}
