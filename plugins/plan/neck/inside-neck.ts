import {inch} from '../../tables/units.ts'
import type {Settled} from '../kit/settled.ts'
import {leastMark, toMark, type WouldDo} from '../kit/would-do.ts'
import {type Cutter, cutDeepened, cutNeck} from '../neck-shape/cut.ts'
import {type InsideBox, leastGapMm} from '../neck-shape/inside.ts'
import {deepened, type NeckEnds, type NeckModel} from '../neck-shape/model.ts'
import {stiffenedNeck} from './stiffened.ts'
import {holds, type Stretch, stretchOf} from './stress.ts'
import type {StringLoad} from './string-load.ts'

/** What a neck that runs through is worth inside the box, where it is cut down; mm from the nut line, N and MPa. */
export interface InsideNeck {
  fromMm: number
  toMm: number
  /** What is left of it. */
  thicknessMm: number
  /** How deep its upper surface lies under the playing face. */
  surfaceMm: number
  /** What each wall presses it down with. */
  wallsN?: number[] | undefined
  eiNmm2?: number | undefined
  /** The largest stress along the grain, of bending and pull. */
  stressMpa?: number | undefined
  /** What its wood may carry. */
  mayCarryMpa?: number | undefined
  /** What would buckle it between the walls, over the pull. */
  bucklingMargin?: number | undefined
  /** The least that carries the strings, and what asks for so much. */
  leastMm?: number | undefined
  because?: Because | undefined
  /** What could still be cut away, by more daylight or a thicker top; negative: it is too thin. */
  spareMm?: number | undefined
  tooThin?: {wouldDo?: WouldDo | undefined} | undefined
}

/** What asks for a thickness: that the wood holds, that it stays straight enough, or common practice where neither is known. */
export type Because = 'strength' | 'bow' | 'practice'

/** The least thickness where wood or strings are not known (mm): common practice, no source. */
const usualLeastMm = inch(3 / 8)

interface Tried {
  model: NeckModel
  ends: NeckEnds
  cut: Cutter
  load: StringLoad | undefined
  /** The daylight that a top which sinks under its bridge needs (mm). */
  needsGapMm?: number | undefined
  /** How straight it stays as it is. */
  straight: Straight | undefined
}

/** Whether a neck stays straight enough, how far it bows (mm), and how many times as far as it may where that is most. */
export interface Straight {
  isEnough: boolean
  reliefMm: number
  times: number
}

/** Tells of a neck how straight it stays. */
type Stiffness = (model: NeckModel, cut: Cutter) => Straight | undefined

/**
 * Say what is left of a neck inside the box, what that carries, and the least thickness that is strong and stiff
 * enough (without `stiffness`, as common practice has it). Where it is thinner, the daylight, thickness inside or size
 * of the neck that would do.
 */
export function planInside(
  settled: Settled,
  {model, ends, cut, load, straight, needsGapMm = leastGapMm}: Tried,
  stiffness: Stiffness | undefined,
): InsideNeck | undefined {
  const {inside} = model
  if (!inside) return undefined
  const {rulerMm} = settled
  const isEnough = (other: NeckModel) => {
    if (!stiffness) return thicknessOf(other) >= usualLeastMm - 1e-6
    const otherCut = cutNeck(other)
    return holds(stretchOf(other, otherCut, load)) && stiffness(other, otherCut)?.isEnough === true
  }
  const mostMm = inside.totalMm - Math.max(inside.underTopMm + leastGapMm, 0)
  const own = stretchOf(model, cut, load)
  const least = leastInside(model, {cut, mostMm, rulerMm, load, straight, own}, stiffness)
  const thicknessMm = Math.max(thicknessOf(model), 0)
  const isThin = thicknessMm < (least.mm ?? Number.POSITIVE_INFINITY) - 1e-6
  const wouldDo = isThin
    ? (cutLess(settled, inside, {leastMm: least.mm, needsGapMm}) ??
      stiffenedNeck(settled, ends, isEnough, straight && {times: straight.times, thickMm: thicknessMm}))
    : undefined
  return {
    fromMm: inside.clear[0],
    toMm: inside.clear[1],
    thicknessMm,
    surfaceMm: inside.surfaceMm,
    wallsN: load?.push && [...load.push.wallsN],
    ...own,
    leastMm: least.mm,
    because: least.because,
    spareMm: least.mm === undefined ? undefined : thicknessMm - least.mm,
    tooThin: isThin ? {wouldDo} : undefined,
  }
}

const thicknessOf = ({inside}: NeckModel) => (inside ? inside.totalMm - inside.surfaceMm : 0)

interface Sought extends Pick<Tried, 'cut' | 'load' | 'straight'> {
  mostMm: number
  rulerMm: number
  /** What it carries as it is. */
  own: Stretch
}

/**
 * Find the least thickness, to a mark of the ruler, that is strong and stiff enough. Where none is stiff enough, but
 * cutting the neck down is the larger part of its bow, none will do (`mm` undefined); where the neck is too limp
 * anyway, the least that is strong: its bow is a matter of the whole neck.
 */
function leastInside(
  model: NeckModel,
  {cut, mostMm, rulerMm, load, straight, own}: Sought,
  stiffness: Stiffness | undefined,
): {mm: number | undefined; because: Because} {
  if (!stiffness) return {mm: usualLeastMm, because: 'practice'}
  const marks = Math.floor(mostMm / rulerMm + 1e-6)
  const left = (mark: number) => deepened(model, mark * rulerMm)
  const isStrong = (other: NeckModel) => holds(stretchOf(other, cutDeepened(other, cut), load))
  const straightOf = (other: NeckModel) => stiffness(other, cutDeepened(other, cut))
  const strongMm =
    thicknessOf(model) * Math.sqrt((own.stressMpa ?? 0) / (own.mayCarryMpa ?? Number.POSITIVE_INFINITY))
  const strong = leastMark([1, marks], (mark) => isStrong(left(mark)), markAbove(strongMm / rulerMm))
  if (strong === undefined) return {mm: undefined, because: 'strength'}
  const limp = straightOf(left(strong))
  if (limp?.isEnough) return {mm: strong * rulerMm, because: 'strength'}
  const uncut = straightOf(left(marks))
  if (uncut?.isEnough && strong < marks) {
    const isStiff = (mark: number) => straightOf(left(mark))?.isEnough === true
    const guess = limp && stiffAt([strong, limp], [marks, uncut])
    const stiff = leastMark([strong + 1, marks - 1], isStiff, guess)
    return {mm: (stiff ?? marks) * rulerMm, because: 'bow'}
  }
  if (straight && uncut && straight.reliefMm > 2 * uncut.reliefMm) return {mm: undefined, because: 'bow'}
  return {mm: strong * rulerMm, because: 'strength'}
}

/**
 * Guess the thickness that is stiff enough, between one that is not and one that is: what the cut-down stretch adds to
 * the bow falls with the cube of its thickness.
 */
function stiffAt([thin, limp]: readonly [number, Straight], [thick, stiff]: readonly [number, Straight]) {
  const cubed = (limp.reliefMm - stiff.reliefMm) / (1 / thin ** 3 - 1 / thick ** 3)
  return markAbove(Math.cbrt(cubed / (limp.reliefMm / limp.times - stiff.reliefMm + cubed / thick ** 3)))
}

const markAbove = (marks: number) => (Number.isFinite(marks) ? Math.ceil(marks) : undefined)

/**
 * Say what the file would have to say for so much (mm) to be left inside: the thickness there, or less daylight. None
 * where the top, which sinks, would come down on it.
 */
function cutLess(
  {values, rulerMm}: Settled,
  inside: InsideBox,
  {leastMm, needsGapMm}: {leastMm: number | undefined; needsGapMm: number},
): WouldDo | undefined {
  if (leastMm === undefined) return undefined
  const gapMm = toMark(inside.totalMm - inside.underTopMm - leastMm, rulerMm, 'down')
  if (gapMm < needsGapMm - 1e-6) return undefined
  if (values.neck?.inside) return {path: 'neck.inside', mm: toMark(leastMm, rulerMm, 'up')}
  if (!values.box?.['neck-gap']) return undefined
  return {path: 'box.neck-gap', mm: gapMm}
}
