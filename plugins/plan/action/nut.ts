import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import type {NeckModel} from '../neck-shape/model.ts'
import {type Heights, nutAboveFaceMm} from './action.ts'

/** What the strings rest on at the head end, in mm above the playing face. */
export interface Nut {
  kind: 'rod' | 'bolt' | 'flat' | 'zero-fret'
  /** Where the strings stand on it, as their heights are drawn. */
  heightMm: number
  /** The frets’ crowns, which heights of a fretted build count from. */
  crownMm: number
  diameterMm?: number | undefined
  grooveMm?: number | undefined
  /** The groove is not in the file: the diameter and the height give it. */
  isGrooveProposed?: boolean | undefined
  /** What it comes to by itself: a rod in its groove, or the crown of a zero fret’s wire. */
  comesToMm?: number | undefined
  /** Why it cannot be made so. */
  trouble?: NutTrouble | undefined
}

/** `drawnMm` and `standsMm`: above the frets’ crowns, or the playing face where there are none. */
export type NutTrouble = {drawnMm: number} & (
  | {is: 'another height'; standsMm: number; groovePerhapsMm?: number | undefined}
  /** The whole rod is in its groove, or below the crowns. */
  | {is: 'sunk'; groovePerhapsMm: number}
  /** The rod is thinner than it should stand high. */
  | {is: 'thin'; diameterPerhapsMm: number}
)

/** So much of a rod at least lies in its groove, as a part of its diameter: common practice, no source. */
export const leastSeated = 1 / 4
/** Heights over frets are set finer than a ruler shows (mm): common practice, no source. */
const overFretsMm = 0.1
const slackMm = 1e-6

/**
 * Say how high the nut stands and what makes it so: a rod or bolt stands out of the playing face by its diameter less
 * its groove, a zero fret by its own crown, so that over other frets of the same wire the strings stand at 0. All in
 * mm. Of diameter, groove and height two give the third; three that differ by more than the ruler, or a tenth of a
 * millimetre over frets, are its trouble.
 * Source: geometry.
 */
export function planNut(
  {nut, frets, scale}: BuildValues,
  heights: Heights | undefined,
  rulerMm: number,
): Nut | undefined {
  const kind = nut?.kind?.value
  if (!nut || !kind || !heights) return undefined
  const {crownMm} = heights
  const heightMm = nutAboveFaceMm(heights)
  const drawnMm = heightMm - crownMm
  const isFretted = scale?.fretted?.value === true
  const diameterMm = nut.diameter?.mm
  const grooveMm = nut.groove?.mm
  const bare: Nut = {kind, heightMm, crownMm, grooveMm}
  const byMm = isFretted || kind === 'zero-fret' ? Math.min(rulerMm, overFretsMm) : rulerMm
  const differs = (comesToMm: number) => Math.abs(comesToMm - heightMm) > byMm + slackMm
  if (kind === 'zero-fret') {
    const comesToMm = frets?.crown?.mm ?? (isFretted ? crownMm : undefined)
    if (comesToMm === undefined || !differs(comesToMm)) return {...bare, comesToMm}
    return {...bare, comesToMm, trouble: {is: 'another height', drawnMm, standsMm: comesToMm - crownMm}}
  }
  // Heights count from the frets' crowns, so that over an unknown wire the nut's own height tells nothing.
  if (kind === 'flat' || diameterMm === undefined || (isFretted && !frets?.crown)) return bare
  const isGrooveProposed = nut.groove?.assumed
  const rod = {...bare, diameterMm, isGrooveProposed}
  const groovePerhapsMm = diameterMm - heightMm
  if (groovePerhapsMm < -slackMm || grooveMm === undefined) {
    const diameterPerhapsMm =
      isGrooveProposed || grooveMm === undefined ? heightMm / (1 - leastSeated) : heightMm + grooveMm
    return {...rod, trouble: {is: 'thin', drawnMm, diameterPerhapsMm}}
  }
  const comesToMm = diameterMm - grooveMm
  const stands: Nut = {...rod, comesToMm}
  if (comesToMm <= crownMm + slackMm) return {...stands, trouble: {is: 'sunk', drawnMm, groovePerhapsMm}}
  if (!differs(comesToMm)) return stands
  return {
    ...stands,
    trouble: {is: 'another height', drawnMm, standsMm: comesToMm - crownMm, groovePerhapsMm},
  }
}

/**
 * Give the groove (mm) that seats a rod or bolt so that the strings stand as drawn: its diameter less their height over
 * the playing face. Undefined where no groove does, or where the frets' crowns, which heights count from, are not known.
 */
export function proposedGrooveMm(
  {nut, frets, scale}: BuildValues,
  heights: Heights | undefined,
): number | undefined {
  const kind = nut?.kind?.value
  if ((kind !== 'rod' && kind !== 'bolt') || !nut?.diameter || !heights) return undefined
  if (scale?.fretted?.value && !frets?.crown) return undefined
  const mm = nut.diameter.mm - nutAboveFaceMm(heights)
  return mm > slackMm ? mm : undefined
}

/** The face of the neck where the nut stands: which layer ends too far forward, and where it has to begin (mm). */
export interface NutFace {
  /** Its path in the build file. */
  of: string
  fromMm: number
  /** In front of the nut line: the nut would stand beside it. */
  isBeforeNut: boolean
  needsFromMm: number
}

/** Wood that a zero fret's slot keeps behind it (mm): common practice, no source. */
const behindSlotMm = inch(1 / 8)

/**
 * Find a layer of the face that ends too far forward for the nut: a flat nut stands against its end, a rod's groove
 * lies in it with both its edges, and a zero fret's slot needs wood behind it. Half the width of a groove g deep for a
 * rod d thick is √(g(d − g)), by geometry.
 */
export function planNutFace(
  {head}: BuildValues,
  {layup}: NeckModel,
  nut: Nut | undefined,
  rulerMm: number,
): NutFace | undefined {
  const short = layup.layers.reduce<(typeof layup.layers)[number] | undefined>(
    (latest, layer) => (layer.fromMm > (latest?.fromMm ?? Number.NEGATIVE_INFINITY) ? layer : latest),
    undefined,
  )
  if (!short || !Number.isFinite(short.fromMm)) return undefined
  const needsFromMm = 0 - needsBehindMm(nut)
  if (short.fromMm <= needsFromMm + rulerMm) return undefined
  return {
    of: short.of,
    fromMm: short.fromMm,
    isBeforeNut: short.fromMm > rulerMm,
    needsFromMm: Math.min(needsFromMm, needsFromMm < 0 ? -(head?.ledge?.mm ?? 0) : 0),
  }
}

function needsBehindMm(nut: Nut | undefined): number {
  if (nut?.kind === 'zero-fret') return behindSlotMm
  const {diameterMm = 0, grooveMm = 0} = nut ?? {}
  const deepMm = Math.min(grooveMm, diameterMm / 2)
  return nut?.kind === 'flat' ? 0 : Math.sqrt(Math.max(deepMm * (diameterMm - deepMm), 0))
}
