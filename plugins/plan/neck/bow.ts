import {inch} from '../../tables/units.ts'
import type {Heights} from '../action/action.ts'
import type {Bridge} from '../action/bridge.ts'
import type {Settled} from '../kit/settled.ts'
import type {WouldDo} from '../kit/would-do.ts'
import type {Bent} from '../neck-shape/bend.ts'
import {type Cutter, cutNeck} from '../neck-shape/cut.ts'
import type {NeckEnds, NeckModel} from '../neck-shape/model.ts'
import type {Scale} from '../scale/scale.ts'
import {type InsideNeck, planInside, type Straight} from './inside-neck.ts'
import {stiffenedNeck} from './stiffened.ts'
import {stringLoad} from './string-load.ts'
import {bucklingMargin, strungNeck} from './strung-neck.ts'

/** How the strings' pull closes: by how the neck joins the box, and for one on top by what carries the bridge. */
export type FreeBody = 'on top' | 'bridge on the top' | 'through' | 'end'

/** How far the strings bow the neck, in mm: a hollow under the straight line from nut to bridge. */
export interface Bow {
  fromMm: number
  toMm: number
  /** The likely hollow, of the neck that the box does not help. */
  reliefMm: number
  reliefAfterCreepMm: number
  /** The likely hollow at half the scale length. */
  octaveMm: number
  /** What creep adds to it there. */
  creepMm: number
  /** Low, high. */
  rangeMm: number[]
  freeBody: FreeBody
  /** The likely hollow at each line. */
  atLinesMm?: number[] | undefined
  /** What would buckle the neck, over the pull. */
  bucklingMargin?: number | undefined
  /** The deepest hollow that frets bear, creep included. */
  mostMm?: number | undefined
  /** The line where the bow, creep included, is more than the strings’ height. */
  tooLow?: (LineTooLow & {label: string; wouldDo?: WouldDo | undefined}) | undefined
  /** Under frets, a hollow deeper than they bear. */
  tooHollow?: {bowMm: number; mostMm: number; wouldDo?: WouldDo | undefined} | undefined
}

/** What bends the neck: its ends, the strings' pull, how high they stand and how they push the bridge. */
export interface Strung {
  ends: NeckEnds
  tensionTotalN: number | undefined
  scale: Scale | undefined
  heights: Heights | undefined
  bridge: Pick<Bridge, 'on' | 'breakAngleDeg' | 'downforceN'> | undefined
  /** Where the strings end, where that is on the box (mm from the nut line, over the playing face). */
  onBox: {stationMm: number; heightMm: number} | undefined
  /** How far (mm) the bridge still comes down in time, on a top that sinks. */
  settlesMm: number
  /** The daylight that such a top needs over a neck that runs through (mm). */
  needsGapMm?: number | undefined
}

/** What the bow grows to under a load that stays: twice. Source: Wood Handbook, FPL-GTR-282, ch. 5, creep. */
export const creep = 2

/** The deepest hollow under frets, creep included (mm): 1/32 in as strung, common practice, no source. */
const reliefMostMm = inch(1 / 16)

/**
 * Say how far the strings bow the neck (mm, a hollow under the straight line from nut to bridge): between held at the
 * box's edge and free, over the range of its wood; after creep; at each line; and how far it is from buckling. Where it
 * comes, with creep, to more than the strings stand above a line or than frets bear, the size that would do; and what
 * a neck that runs through a box is worth inside it.
 * The likely value is that of the free neck, or at the end of a box of the held one.
 */
export function planBow(
  settled: Settled,
  model: NeckModel,
  strung: Strung,
): {bow?: Bow | undefined; inside?: InsideNeck | undefined} {
  const {ends, bridge, scale, heights, settlesMm} = strung
  const load = stringLoad({...strung, scaleMm: scale?.lengthMm}, model.inside)
  const {boxAtMm, inside} = model
  const joins = settled.values.neck?.joins?.value ?? 'on top'
  const freeMm =
    joins === 'end' && boxAtMm !== undefined ? boxAtMm : (inside?.wallsMm[1] ?? load?.scaleMm ?? 0)
  const judge = (tried: NeckModel, cut: Cutter): Judged | undefined => {
    const bent = load && strungNeck(tried, cut, load, freeMm)
    return bent && {bent, ...judged(bent, {scale, heights, settlesMm})}
  }
  const stiffness = (tried: NeckModel, triedCut: Cutter) => {
    const found = judge(tried, triedCut)
    return found && straightOf(found)
  }
  const cut = cutNeck(model)
  const likely = judge(model, cut)
  // What is cut away altogether has no bow, yet a thickness that would do.
  const isKnown = load && model.layup.layers.every(({eMpa}) => eMpa !== undefined)
  const straight = likely && straightOf(likely)
  const tried = {model, ends, cut, load, straight, needsGapMm: strung.needsGapMm}
  const insideNeck = planInside(settled, tried, isKnown ? stiffness : undefined)
  if (!load || !likely) return {inside: insideNeck}
  const heldMm = Math.min(Math.max(boxAtMm ?? freeMm, 0), freeMm)
  const isSure = model.layup.layers.every(({eRangeMpa: range}) => range?.[0] === range?.[1])
  const least = strungNeck(model, isSure ? cut : cutNeck(model, 'high'), load, heldMm)
  const most = isSure ? likely.bent : strungNeck(model, cutNeck(model, 'low'), load, freeMm)
  if (!least || !most) return {inside: insideNeck}
  const {bent, atLinesMm, tooLow, tooHollow} = likely
  const isTooMuch = (tooLow !== undefined || tooHollow !== undefined) && !insideNeck?.tooThin
  const isEnough = (tried: NeckModel) => stiffness(tried, cutNeck(tried))?.isEnough === true
  const wouldDo = isTooMuch
    ? stiffenedNeck(settled, ends, isEnough, {times: straightOf(likely).times, thickMm: model.layup.totalMm})
    : undefined
  const octaveMm = bent.hollowAt(load.scaleMm / 2)
  const bow: Bow = {
    fromMm: 0,
    toMm: Math.min(freeMm, load.scaleMm),
    reliefMm: bent.reliefMm,
    reliefAfterCreepMm: creep * bent.reliefMm,
    octaveMm,
    creepMm: (creep - 1) * octaveMm,
    rangeMm: [least.reliefMm, most.reliefMm].sort((a, b) => a - b),
    freeBody: joins === 'on top' && bridge?.on === 'top' ? 'bridge on the top' : joins,
    atLinesMm,
    bucklingMargin: bucklingMargin(cut, Math.min(freeMm, load.scaleMm), load.tensionN),
    mostMm: scale?.fretted ? reliefMostMm : undefined,
    tooLow: isTooMuch && tooLow ? {...tooLow, wouldDo} : undefined,
    tooHollow: isTooMuch && tooHollow ? {...tooHollow, wouldDo} : undefined,
  }
  return {bow, inside: insideNeck}
}

/** A bent neck, and what is too much of it. */
interface Judged {
  bent: Bent
  atLinesMm?: number[] | undefined
  tooLow?: (LineTooLow & {label: string}) | undefined
  tooHollow?: {bowMm: number; mostMm: number} | undefined
}

/** Say how straight a neck stays that was judged. */
const straightOf = ({bent, tooLow, tooHollow}: Judged): Straight => ({
  isEnough: !tooLow && !tooHollow,
  reliefMm: bent.reliefMm,
  times: Math.max(
    1,
    tooLow ? tooLow.bowMm / tooLow.actionMm : 0,
    tooHollow ? tooHollow.bowMm / tooHollow.mostMm : 0,
  ),
})

type Strings = Pick<Strung, 'scale' | 'heights' | 'settlesMm'>

/**
 * Judge a bend with its creep against the height over each line that is left to the strings once a top has settled
 * under their bridge, and against what frets bear.
 */
function judged(bent: Bent, {scale, heights, settlesMm}: Strings): Omit<Judged, 'bent'> {
  const atLinesMm = scale?.lines?.map(({fromNutMm}) => bent.hollowAt(fromNutMm))
  const short =
    heights && scale && lineTooLow(atLinesMm, scale, {...heights, octaveMm: heights.octaveMm - settlesMm / 2})
  const bowMm = creep * bent.reliefMm
  return {
    atLinesMm,
    tooLow: short && {...short, label: scale.lines?.[short.line]?.label ?? ''},
    tooHollow: scale?.fretted && bowMm > reliefMostMm ? {bowMm, mostMm: reliefMostMm} : undefined,
  }
}

/** A line where the strings bow the neck, creep included, further than they stand above it, in mm. */
interface LineTooLow {
  /** Counted from 0. */
  line: number
  bowMm: number
  actionMm: number
}

/** Find the line, counted from 0, where bow and creep exceed the strings' height by most; undefined where none does. */
function lineTooLow(
  hollowMm: readonly number[] = [],
  {lines = [], lengthMm = 0}: Scale,
  {nutMm, octaveMm}: Heights,
): LineTooLow | undefined {
  let worst: LineTooLow | undefined
  for (const [line, hollow] of hollowMm.entries()) {
    const actionMm = nutMm + (2 * (octaveMm - nutMm) * (lines[line]?.fromNutMm ?? 0)) / lengthMm
    const bowMm = creep * hollow
    if (bowMm > actionMm && !(worst && worst.bowMm - worst.actionMm >= bowMm - actionMm))
      worst = {line, bowMm, actionMm}
  }
  return worst
}
