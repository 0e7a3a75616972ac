import type {Plan} from '../plan.ts'
import type {WouldDo} from '../would-do.ts'
import {type Bent, bend, type Curvature} from './bend.ts'
import type {NeckConcern} from './concern.ts'
import {type Cutter, cutNeck} from './cut.ts'
import {distinctPlaces, type NeckModel} from './model.ts'
import {stiffenedNeck} from './stiffened.ts'

/** How the strings' pull closes: by how the neck joins the box, and for one on top by what carries the bridge. */
export type FreeBody = 'on top' | 'bridge on the top' | 'through' | 'end'

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
  tooLow?:
    | {
        /** Counted from 0. */
        line: number
        label: string
        bowMm: number
        actionMm: number
        /** The value to change, and what would do, in mm. */
        wouldDo?: WouldDo | undefined
      }
    | undefined
}

/** What the bow grows to under a load that stays: twice. Source: Wood Handbook, FPL-GTR-282, ch. 5, creep. */
const creep = 2

/**
 * Say how far the strings bow the neck (mm, a hollow under the straight line from nut to bridge): between held at the
 * box's edge and free, over the range of its wood; after creep; at each line; and how far it is from buckling. Where it
 * comes to more than the strings stand above a line, the size that would do.
 * The likely value is that of the free neck, or at the end of a box of the held one.
 */
export const neckBow: NeckConcern = ({model, cut, settled, soFar}) => {
  const pull = pullOf(soFar)
  if (!pull) return {}
  const joins = settled.values.neck?.joins?.value ?? 'on top'
  const {boxAtMm} = model
  const freeMm = joins === 'end' && boxAtMm !== undefined ? boxAtMm : pull.scaleMm
  const heldMm = Math.min(Math.max(boxAtMm ?? freeMm, 0), freeMm)
  const {scaleMm} = pull
  const isSure = model.layup.layers.every(({eRangeMpa: range}) => range?.[0] === range?.[1])
  const bent = (by: Cutter, stiffFromMm: number) =>
    strungNeck(model, curvatureOf(by, pull), {stiffFromMm, scaleMm})
  const likely = bent(cut, freeMm)
  const least = bent(isSure ? cut : cutNeck(model, 'high'), heldMm)
  const most = isSure ? likely : bent(cutNeck(model, 'low'), freeMm)
  if (!likely || !least || !most) return {}
  const atLinesMm = soFar.scale?.lines?.map(({fromNutMm}) => likely.hollowAt(fromNutMm))
  const bow: Bow = {
    fromMm: 0,
    toMm: freeMm,
    reliefMm: likely.reliefMm,
    reliefAfterCreepMm: creep * likely.reliefMm,
    rangeMm: [least.reliefMm, most.reliefMm].sort((a, b) => a - b),
    freeBody: joins === 'on top' && soFar.bridge?.on === 'top' ? 'bridge on the top' : joins,
    ...(atLinesMm && {atLinesMm}),
    ...buckling(cut, freeMm, pull.tensionN),
  }
  const short = lineTooLow(atLinesMm, soFar.action?.atLinesMm)
  if (!short) return {bow}
  const isEnough = (stiffer: NeckModel) => {
    const less = strungNeck(stiffer, curvatureOf(cutNeck(stiffer), pull), {stiffFromMm: freeMm, scaleMm})
    const hollows = less && soFar.scale?.lines?.map(({fromNutMm}) => less.hollowAt(fromNutMm))
    return hollows !== undefined && !lineTooLow(hollows, soFar.action?.atLinesMm)
  }
  const wouldDo = stiffenedNeck(settled, soFar, isEnough)
  const label = soFar.scale?.lines?.[short.line]?.label ?? ''
  return {bow: {...bow, tooLow: {...short, label, ...(wouldDo && {wouldDo})}}}
}

/** Compare the pull with what would buckle a straight column of this length: π²·EI/L². Source: Euler's column. */
function buckling(cut: Cutter, lengthMm: number, tensionN: number): Partial<Bow> {
  const stiffness = [0, lengthMm / 2].map((at) => cut(at)?.values.eiNmm2 ?? Number.NaN)
  const margin = (Math.PI ** 2 * Math.min(...stiffness)) / lengthMm ** 2 / tensionN
  return Number.isFinite(margin) ? {bucklingMargin: margin} : {}
}

/** A line where the strings bow the neck further than they stand above it, in mm. */
export interface LineTooLow {
  line: number
  bowMm: number
  actionMm: number
}

/** Find the line, counted from 0, where the bow exceeds the lowest string's height by most; undefined where none does. */
export function lineTooLow(
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
export interface Pull {
  tensionN: number
  nutMm: number
  bridgeMm: number
  scaleMm: number
}

/** Gather the pull; undefined before strings, scale and heights are known. */
export function pullOf({tensionTotalN, action, scale}: Plan): Pull | undefined {
  const scaleMm = scale?.lengthMm
  if (tensionTotalN === undefined || !action || scaleMm === undefined) return undefined
  const nutMm = action.nutMm + (action.crownMm ?? 0)
  return {tensionN: tensionTotalN, nutMm, bridgeMm: action.bridgeHeightMm, scaleMm}
}

/**
 * Give the neck's curvature under the strings at any station: the moment is the pull times its height over the neutral
 * axis (N·mm), the curvature that over EI; not a number where its stiffness is not known.
 */
export function curvatureOf(cut: Cutter, {tensionN, nutMm, bridgeMm, scaleMm}: Pull): Curvature {
  return (stationMm) => {
    const {eiNmm2 = 0, neutralAxisMm = 0} = cut(stationMm)?.values ?? {}
    const heightMm = nutMm + ((bridgeMm - nutMm) * stationMm) / scaleMm
    return eiNmm2 > 0 ? (tensionN * (neutralAxisMm + heightMm)) / eiNmm2 : Number.NaN
  }
}

/**
 * Bend the neck by that curvature between nut and bridge line. Past `stiffFromMm` the neck is held straight. Undefined
 * where its stiffness is not known.
 */
export function strungNeck(
  {tailMm, changes}: NeckModel,
  curvature: Curvature,
  {stiffFromMm, scaleMm}: {stiffFromMm: number; scaleMm: number},
): Bent | undefined {
  const endMm = Math.min(stiffFromMm, tailMm ?? scaleMm, scaleMm)
  const breaks = [0, scaleMm / 2, endMm, scaleMm, ...changes.map(({stationMm}) => stationMm)]
  const bent = bend(
    (stationMm) => (stationMm >= endMm ? 0 : curvature(stationMm)),
    distinctPlaces(breaks.filter((at) => at >= 0 && at <= scaleMm)),
  )
  return Number.isFinite(bent.reliefMm) ? bent : undefined
}
