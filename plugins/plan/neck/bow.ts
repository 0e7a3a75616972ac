import {type Action, nutAboveFaceMm} from '../action.ts'
import type {Bridge} from '../bridge.ts'
import type {Scale} from '../scale.ts'
import type {Settled} from '../settle.ts'
import type {WouldDo} from '../would-do.ts'
import {type Bent, bend, type Curvature} from './bend.ts'
import {type Cutter, cutNeck} from './cut.ts'
import {distinctPlaces, type NeckEnds, type NeckModel} from './model.ts'
import {stiffenedNeck} from './stiffened.ts'

/** How the strings' pull closes: by how the neck joins the box, and for one on top by what carries the bridge. */
export type FreeBody = 'on top' | 'bridge on the top' | 'through' | 'end'

/** How far the strings bow the neck, in mm: a hollow under the straight line from nut to bridge. */
export interface Bow {
  fromMm: number
  toMm: number
  /** The likely hollow, of the neck that the box does not help. */
  reliefMm: number
  reliefAfterCreepMm: number
  /** Low, high. */
  rangeMm: number[]
  freeBody: FreeBody
  /** The likely hollow at each line. */
  atLinesMm?: number[] | undefined
  /** What would buckle the neck, over the pull. */
  bucklingMargin?: number | undefined
  /** The line where the bow is more than the strings’ height. */
  tooLow?: (LineTooLow & {label: string; wouldDo?: WouldDo | undefined}) | undefined
}

/** What bends the neck: its ends, the strings' pull and how high they stand. */
export interface Strung {
  ends: NeckEnds
  tensionTotalN: number | undefined
  scale: Scale | undefined
  action: Action | undefined
  bridge: Bridge | undefined
}

/** What the bow grows to under a load that stays: twice. Source: Wood Handbook, FPL-GTR-282, ch. 5, creep. */
const creep = 2

/**
 * Say how far the strings bow the neck (mm, a hollow under the straight line from nut to bridge): between held at the
 * box's edge and free, over the range of its wood; after creep; at each line; and how far it is from buckling. Where it
 * comes to more than the strings stand above a line, the size that would do.
 * The likely value is that of the free neck, or at the end of a box of the held one.
 */
export function planBow(settled: Settled, model: NeckModel, cut: Cutter, strung: Strung): Bow | undefined {
  const pull = pullOf(strung)
  if (!pull) return undefined
  const {ends, bridge, scale, action} = strung
  const joins = settled.values.neck?.joins?.value ?? 'on top'
  const {boxAtMm} = model
  const freeMm = joins === 'end' && boxAtMm !== undefined ? boxAtMm : pull.scaleMm
  const heldMm = Math.min(Math.max(boxAtMm ?? freeMm, 0), freeMm)
  const isSure = model.layup.layers.every(({eRangeMpa: range}) => range?.[0] === range?.[1])
  const likely = strungNeck(model, cut, pull, freeMm)
  const least = strungNeck(model, isSure ? cut : cutNeck(model, 'high'), pull, heldMm)
  const most = isSure ? likely : strungNeck(model, cutNeck(model, 'low'), pull, freeMm)
  if (!likely || !least || !most) return undefined
  const hollows = (bent: Bent) => scale?.lines?.map(({fromNutMm}) => bent.hollowAt(fromNutMm))
  const atLinesMm = hollows(likely)
  const short = lineTooLow(atLinesMm, action?.atLinesMm)
  const isEnough = (stiffer: NeckModel) => {
    const less = strungNeck(stiffer, cutNeck(stiffer), pull, freeMm)
    const left = less && hollows(less)
    return left !== undefined && !lineTooLow(left, action?.atLinesMm)
  }
  return {
    fromMm: 0,
    toMm: freeMm,
    reliefMm: likely.reliefMm,
    reliefAfterCreepMm: creep * likely.reliefMm,
    rangeMm: [least.reliefMm, most.reliefMm].sort((a, b) => a - b),
    freeBody: joins === 'on top' && bridge?.on === 'top' ? 'bridge on the top' : joins,
    atLinesMm,
    bucklingMargin: bucklingMargin(cut, freeMm, pull.tensionN),
    tooLow: short && {
      ...short,
      label: scale?.lines?.[short.line]?.label ?? '',
      wouldDo: stiffenedNeck(settled, ends, isEnough),
    },
  }
}

/** Compare the pull with what would buckle a straight column of this length: π²·EI/L². Source: Euler's column. */
function bucklingMargin(cut: Cutter, lengthMm: number, tensionN: number): number | undefined {
  const stiffness = [0, lengthMm / 2].map((at) => cut(at)?.values.eiNmm2 ?? Number.NaN)
  const margin = (Math.PI ** 2 * Math.min(...stiffness)) / lengthMm ** 2 / tensionN
  return Number.isFinite(margin) ? margin : undefined
}

/** A line where the strings bow the neck further than they stand above it, in mm. */
interface LineTooLow {
  /** Counted from 0. */
  line: number
  bowMm: number
  actionMm: number
}

/** Find the line, counted from 0, where the bow exceeds the lowest string's height by most; undefined where none does. */
function lineTooLow(
  bowMm: readonly number[] = [],
  heightsMm: readonly (readonly number[])[] = [],
): LineTooLow | undefined {
  const over = bowMm.map((bow, line) => ({
    line,
    bowMm: bow,
    actionMm: Math.min(...heightsMm.map((heights) => heights[line] ?? Number.POSITIVE_INFINITY)),
  }))
  return over
    .filter((one) => one.bowMm > one.actionMm)
    .reduce<LineTooLow | undefined>(
      (worst, one) => (worst && worst.bowMm - worst.actionMm >= one.bowMm - one.actionMm ? worst : one),
      undefined,
    )
}

/** The pull of all strings, and how high they stand above the playing face at nut and bridge line. */
interface Pull {
  tensionN: number
  nutMm: number
  bridgeMm: number
  scaleMm: number
}

/** Gather the pull; undefined before strings, scale and heights are known. */
function pullOf({tensionTotalN, action, scale}: Strung): Pull | undefined {
  const scaleMm = scale?.lengthMm
  if (tensionTotalN === undefined || !action || scaleMm === undefined) return undefined
  return {tensionN: tensionTotalN, nutMm: nutAboveFaceMm(action), bridgeMm: action.bridgeHeightMm, scaleMm}
}

/**
 * Bend the neck between nut and bridge line: the moment is the pull times its height over the neutral axis (N·mm), the
 * curvature that over EI. Past `stiffFromMm` the neck is held straight. Undefined where its stiffness is not known.
 */
function strungNeck(
  {tailMm, changes}: NeckModel,
  cut: Cutter,
  {tensionN, nutMm, bridgeMm, scaleMm}: Pull,
  stiffFromMm: number,
): Bent | undefined {
  const endMm = Math.min(stiffFromMm, tailMm ?? scaleMm, scaleMm)
  const curvature: Curvature = (stationMm) => {
    if (stationMm >= endMm) return 0
    const {eiNmm2 = 0, neutralAxisMm = 0} = cut(stationMm)?.values ?? {}
    const heightMm = nutMm + ((bridgeMm - nutMm) * stationMm) / scaleMm
    return eiNmm2 > 0 ? (tensionN * (neutralAxisMm + heightMm)) / eiNmm2 : Number.NaN
  }
  const breaks = [0, scaleMm / 2, endMm, scaleMm, ...changes.map(({stationMm}) => stationMm)]
  const bent = bend(curvature, distinctPlaces(breaks.filter((at) => at >= 0 && at <= scaleMm)))
  return Number.isFinite(bent.reliefMm) ? bent : undefined
}
