import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import type {NeckInBox} from '../joint/neck-in-box.ts'
import {type BoxPlace, stationOf} from '../kit/box-place.ts'
import {type Conflict, isTooNear} from '../kit/conflicts.ts'
import {woodOf} from '../kit/woods.ts'
import {type NeckTaper, neckWidthAt} from '../neck-shape/taper.ts'
import type {StringPlan} from '../strings/strings.ts'
import type {Placed} from '../strings/tuners.ts'

/** How the row of anchors fits the neck, in mm. */
export interface AnchorRow {
  bodyMm: number
  /** Between neighbours and out to an edge, at least. */
  woodMm: number
  betweenMm?: number | undefined
  /** The closest spacing. */
  closestMm?: number | undefined
  /** Wood outside the outer ones. */
  edgeMm?: number | undefined
  /** The widest spacing. */
  widestMm?: number | undefined
  /** The thickest string. */
  stringMm?: number | undefined
  /** Where ball ends hold: a ball, at the least. */
  ballMm?: number | undefined
  /** The strings would cut into bare wood here. */
  isSoft?: boolean | undefined
}

/** Wood between neighbours and out to an edge of the neck, at least (mm): common practice, no source. */
export const woodMm = inch(1 / 16)
/** Wood lighter than this (times water) is cut by a string: common practice, no source. */
const softBelow = 0.5
/** A ball end's diameter, at least (mm): from memory. */
export const ballMm = inch(5 / 32)

/**
 * Place the strings' anchors in a row square to the neck, even about the centre line, in the order of the strings.
 * Undefined without a place, or without a spacing where there is more than one.
 */
export function planAnchors(
  {anchors, strings = []}: BuildValues,
  place: BoxPlace | undefined,
  named: readonly Pick<StringPlan, 'name'>[] = [],
): Placed[] | undefined {
  const stationMm = stationOf(anchors ?? {}, place)
  const spacingMm = strings.length === 1 ? 0 : anchors?.spacing?.mm
  if (stationMm === undefined || spacingMm === undefined || strings.length === 0) return undefined
  const {proposed} = (anchors?.at ?? anchors?.along)!
  return strings.map((_, i) => ({
    name: named[i]?.name,
    stationMm,
    offMm: (i - (strings.length - 1) / 2) * spacingMm,
    proposed,
  }))
}

/** Tell whether the strings are held at the bridge itself: anchored within the foot of one that stands on the top. */
export function isAnchoredAtBridge(
  {anchors, bridge, scale}: BuildValues,
  place: BoxPlace | undefined,
): boolean {
  const anchorMm = stationOf(anchors ?? {}, place)
  if (bridge?.on?.value !== 'top' || anchorMm === undefined || !scale?.length) return false
  return Math.abs(anchorMm - scale.length.mm) <= (bridge.foot?.mm ?? 0) / 2 + 1e-6
}

/** Say where the strings end: mm from the nut line and over the playing face, where the file gives both. */
export function anchorsOnBox({anchors}: BuildValues, place: BoxPlace | undefined) {
  const stationMm = stationOf(anchors ?? {}, place)
  const heightMm = anchors?.height?.mm
  return stationMm === undefined || heightMm === undefined ? undefined : {stationMm, heightMm}
}

/** Tell whether the strings are anchored on the neck, past whatever of the box lies over it. */
export function isAnchoredOnNeck(
  {anchors}: BuildValues,
  place: BoxPlace | undefined,
  neck: NeckInBox | undefined,
): boolean | undefined {
  if (neck?.joins === 'end') return false
  const anchorMm = stationOf(anchors ?? {}, place)
  if (anchorMm === undefined || !neck) return undefined
  if (neck.tailMm === undefined) return undefined
  const isBeyondBox = neck.joins === 'on top' || anchorMm > (place?.tailMm ?? Number.POSITIVE_INFINITY)
  return isBeyondBox && anchorMm <= neck.tailMm
}

/**
 * Say how the row of anchors fits the neck: the wood between neighbours, out to the edges, the closest and widest
 * spacing that would do, and what the string holes have to let through and to hold.
 */
export function planAnchorRow(
  values: BuildValues,
  anchors: readonly Placed[] | undefined,
  isOnNeck: boolean | undefined,
  taper: NeckTaper | undefined,
): AnchorRow | undefined {
  const given = values.anchors
  const bodyMm = given?.body?.mm ?? given?.['string-hole']?.mm
  if (!given || !anchors?.length || bodyMm === undefined) return undefined
  const halfMm = isOnNeck && taper ? (neckWidthAt(anchors[0]!.stationMm, taper) ?? 0) / 2 : undefined
  const spaces = anchors.length - 1
  const isSpaced = spaces > 0 && given.spacing !== undefined
  const isBallHeld = given.kind?.value === 'plain' && values.strings?.some(({ends}) => ends?.value === 'ball')
  const thickestMm = Math.max(0, ...(values.strings ?? []).map(({gauge}) => gauge?.mm ?? 0))
  const bears = isOnNeck ? (values.neck?.laminations?.[0]?.wood ?? values.neck?.wood) : values.box?.wood
  const wood = woodOf(bears?.value)
  return {
    bodyMm,
    woodMm,
    betweenMm: isSpaced ? given.spacing!.mm - bodyMm : undefined,
    closestMm: isSpaced ? bodyMm + woodMm : undefined,
    edgeMm: halfMm === undefined ? undefined : halfMm - (Math.abs(anchors[spaces]!.offMm) + bodyMm / 2),
    widestMm: halfMm === undefined || spaces < 1 ? undefined : ((halfMm - woodMm - bodyMm / 2) * 2) / spaces,
    stringMm: thickestMm > 0 ? thickestMm : undefined,
    ballMm: isBallHeld ? ballMm : undefined,
    isSoft: wood && wood.g12 < softBelow,
  }
}

/** List where the anchors are too near each other, or an edge of the neck, and the spacing that would do. */
export function planAnchorConflicts({anchors}: BuildValues, row: AnchorRow | undefined): Conflict[] {
  const {woodMm: needsMm = 0, betweenMm, closestMm = 0, edgeMm, widestMm} = row ?? {}
  const path = 'anchors.spacing'
  const of = anchors?.spacing ? path : 'anchors'
  const conflicts: Conflict[] = []
  if (betweenMm !== undefined)
    conflicts.push({kind: 'anchor-anchor', of, gapMm: betweenMm, needsMm, wouldDo: {path, mm: closestMm}})
  if (edgeMm !== undefined) {
    const canClose = anchors?.spacing && widestMm !== undefined && widestMm >= closestMm
    const wouldDo = canClose ? {path, mm: widestMm} : undefined
    conflicts.push({kind: 'anchor-edge', of, gapMm: edgeMm, needsMm, wouldDo})
  }
  return conflicts.filter(isTooNear)
}
