import {inch} from '../../tables/units.ts'
import type {Settled} from '../settled.ts'
import {leastMark, toMark, type WouldDo} from '../would-do.ts'
import {type Cut, type Cutter, cutNeck} from './cut.ts'
import {type InsideBox, leastGapMm} from './inside.ts'
import {deepened, type NeckEnds, type NeckModel} from './model.ts'
import {stiffenedNeck} from './stiffened.ts'
import {momentAt, type StringLoad} from './string-load.ts'

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

/**
 * The part of a wood's modulus of rupture that it may carry for years: a third. Design values take 2.1 to 2.3 off for
 * load that stays and for safety (ASTM D245, from memory), and boards scatter by some 16 % (Wood Handbook, ch. 5).
 */
export const strengthPart = 1 / 3

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
  const least = leastInside(model, {mostMm, rulerMm, load, straight}, stiffness)
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
    ...stretchOf(model, cut, load),
    leastMm: least.mm,
    because: least.because,
    spareMm: least.mm === undefined ? undefined : thicknessMm - least.mm,
    tooThin: isThin ? {wouldDo} : undefined,
  }
}

const thicknessOf = ({inside}: NeckModel) => (inside ? inside.totalMm - inside.surfaceMm : 0)

/**
 * Find the least thickness, to a mark of the ruler, that is strong and stiff enough. Where none is stiff enough, but
 * cutting the neck down is the larger part of its bow, none will do (`mm` undefined); where the neck is too limp
 * anyway, the least that is strong: its bow is a matter of the whole neck.
 */
function leastInside(
  model: NeckModel,
  {mostMm, rulerMm, load, straight}: Pick<Tried, 'load' | 'straight'> & {mostMm: number; rulerMm: number},
  stiffness: Stiffness | undefined,
): {mm: number | undefined; because: Because} {
  if (!stiffness) return {mm: usualLeastMm, because: 'practice'}
  const marks = Math.floor(mostMm / rulerMm + 1e-6)
  const left = (mark: number) => deepened(model, mark * rulerMm)
  const isStrong = (other: NeckModel) => holds(stretchOf(other, cutNeck(other), load))
  const straightOf = (other: NeckModel) => stiffness(other, cutNeck(other))
  const strong = leastMark([1, marks], (mark) => isStrong(left(mark)))
  if (strong === undefined) return {mm: undefined, because: 'strength'}
  if (straightOf(left(strong))?.isEnough) return {mm: strong * rulerMm, because: 'strength'}
  const uncut = straightOf(left(marks))
  if (uncut?.isEnough && strong < marks) {
    const stiff = leastMark([strong + 1, marks - 1], (mark) => straightOf(left(mark))?.isEnough === true)
    return {mm: (stiff ?? marks) * rulerMm, because: 'bow'}
  }
  if (straight && uncut && straight.reliefMm > 2 * uncut.reliefMm) return {mm: undefined, because: 'bow'}
  return {mm: strong * rulerMm, because: 'strength'}
}

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

interface Stretch {
  eiNmm2?: number | undefined
  stressMpa?: number | undefined
  mayCarryMpa?: number | undefined
  bucklingMargin?: number | undefined
}

/** A stretch holds where its stress is known to stay under what its wood may carry, or that is not known of the wood. */
const holds = ({stressMpa, mayCarryMpa}: Stretch) =>
  stressMpa !== undefined && (mayCarryMpa === undefined || stressMpa <= mayCarryMpa)

/** Say how stiff the stretch between the walls is, how hard it is stressed where it is worst, and what would buckle it. */
function stretchOf({inside, changes, tailMm}: NeckModel, cut: Cutter, load: StringLoad | undefined): Stretch {
  if (!inside) return {}
  const [fromMm, toMm] = [inside.clear[0], Math.min(inside.clear[1], tailMm ?? inside.clear[1])]
  if (!(toMm > fromMm)) return {}
  const places = [
    fromMm,
    (fromMm + toMm) / 2,
    toMm - 1e-6,
    ...(load ? [load.scaleMm] : []),
    ...changes.map(({stationMm}) => stationMm),
  ].filter((at) => at >= fromMm && at < toMm)
  const cuts = places.map((at) => cut(at))
  const eiNmm2 = Math.min(...cuts.map((one) => one?.values.eiNmm2 ?? Number.NaN))
  if (!load || Number.isNaN(eiNmm2)) return {eiNmm2: Number.isNaN(eiNmm2) ? undefined : eiNmm2}
  const worst = places.flatMap((at, i) => strainOf(cuts[i]!, at, load)).reduce(harder)
  return {
    eiNmm2,
    stressMpa: worst.stressMpa,
    mayCarryMpa: worst.mayCarryMpa,
    bucklingMargin: (Math.PI ** 2 * eiNmm2) / (toMm - fromMm) ** 2 / load.tensionN,
  }
}

interface Strain {
  stressMpa: number
  mayCarryMpa?: number | undefined
}

/** Of two layers the one nearer to what it may carry. */
const harder = (a: Strain, b: Strain) =>
  b.stressMpa / (b.mayCarryMpa ?? 1e3) > a.stressMpa / (a.mayCarryMpa ?? 1e3) ? b : a

/**
 * Give the stress along the grain of each layer of a section (MPa), at its face or back: E·κ·z and its share of the
 * pull, which presses the neck together. Source: Gere & Goodno, Mechanics of Materials, ch. 6.
 */
function strainOf({values, layers, widthMm}: Cut, stationMm: number, load: StringLoad): Strain[] {
  const {neutralAxisMm = 0, eiNmm2 = Number.NaN} = values
  const curved = momentAt(load, stationMm, neutralAxisMm) / eiNmm2
  const stiffness = layers.reduce((sum, {eMpa = 0, thicknessMm}) => sum + eMpa * thicknessMm * widthMm, 0)
  const pressed = load.tensionN / stiffness
  return layers.map(({eMpa = 0, morMpa, fromFaceMm, thicknessMm}) => {
    const ends = [fromFaceMm, fromFaceMm + thicknessMm].map((deep) =>
      Math.abs(eMpa * (curved * (deep - neutralAxisMm) - pressed)),
    )
    return {
      stressMpa: Math.max(...ends),
      mayCarryMpa: morMpa === undefined ? undefined : strengthPart * morMpa,
    }
  })
}
