import {isAnchoredOnNeck} from './fasteners/joint-loads.ts'
import {neckTaper, neckWidthAt} from './neck/taper.ts'
import type {PlanPart} from './part.ts'
import {stationOf} from './station-of.ts'
import {woodOf} from './woods.ts'

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

/**
 * Place the strings' anchors in a row square to the neck, even about the centre line: mm from the nut line and off
 * it, in the order of the strings. Absent without a place, or without a spacing where there is more than one.
 */
export const stringAnchors: PlanPart = ({values}, soFar) => {
  const {anchors, strings = []} = values
  const stationMm = stationOf(anchors ?? {}, soFar.box)
  const spacingMm = strings.length === 1 ? 0 : anchors?.spacing?.mm
  if (stationMm === undefined || spacingMm === undefined || strings.length === 0) return {}
  return {
    anchors: strings.map((_, i) => {
      const name = soFar.strings?.[i]?.name
      return {
        ...(name !== undefined && {name}),
        stationMm,
        offMm: (i - (strings.length - 1) / 2) * spacingMm,
      }
    }),
  }
}

const inchMm = 25.4
/** Wood between neighbours and out to an edge of the neck, at least (mm): common practice, no source. */
const woodMm = inchMm / 16
/** Wood lighter than this (times water) is cut by a string: common practice, no source. */
const softBelow = 0.5
/** A ball end's diameter, at least (mm): from memory. */
const ballMm = (inchMm * 5) / 32

/**
 * Say how the row of anchors fits the neck (mm): the wood between neighbours, out to the edges,
 * the closest and widest spacing that would do, and what the string holes have to let through and to hold.
 */
export const anchorRow: PlanPart = ({values}, soFar) => {
  const {anchors = []} = soFar
  const given = values.anchors
  const bodyMm = given?.body?.mm ?? given?.['string-hole']?.mm
  if (!given || !anchors.length || bodyMm === undefined) return {}
  const stationMm = anchors[0]!.stationMm
  const isOnNeck = isAnchoredOnNeck(values, soFar)
  const taper = neckTaper(values)
  const halfMm = isOnNeck && taper ? (neckWidthAt(stationMm, taper) ?? 0) / 2 : undefined
  const spaces = anchors.length - 1
  const outerMm = Math.abs(anchors[spaces]!.offMm) + bodyMm / 2
  const isBallHeld = given.kind?.value === 'plain' && values.strings?.some(({ends}) => ends?.value === 'ball')
  const thickestMm = Math.max(0, ...(values.strings ?? []).map(({gauge}) => gauge?.mm ?? 0))
  const bears = isOnNeck ? (values.neck?.laminations?.[0]?.wood ?? values.neck?.wood) : values.box?.wood
  const wood = woodOf(bears?.value)
  return {
    anchorRow: {
      bodyMm,
      woodMm,
      ...(spaces > 0 && given.spacing && {betweenMm: given.spacing.mm - bodyMm, closestMm: bodyMm + woodMm}),
      ...(halfMm !== undefined && {
        edgeMm: halfMm - outerMm,
        ...(spaces > 0 && {widestMm: ((halfMm - woodMm - bodyMm / 2) * 2) / spaces}),
      }),
      ...(thickestMm > 0 && {stringMm: thickestMm}),
      ...(isBallHeld && {ballMm}),
      ...(wood && {isSoft: wood.g12 < softBelow}),
    },
  }
}
