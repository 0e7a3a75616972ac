import type {BuildValues} from '../build-file/schema.ts'
import {type NeckModel, neckModel} from './neck/model.ts'
import {neckTaper, neckWidthAt} from './neck/taper.ts'
import type {PlanPart} from './part.ts'
import type {Plan} from './plan.ts'

export interface Outline {
  neck?: NeckOutline | undefined
  head?: HeadOutline | undefined
  nut?:
    | {
        kind: string
        /** What it takes along the neck; 0 where that is not known. */
        alongMm: number
        /** How deep it lies in the neck. */
        grooveMm: number
      }
    | undefined
  bridge?:
    | {
        /** Across the strings. */
        lengthMm: number
        /** Along the strings; 0 where that is not known. */
        footMm: number
      }
    | undefined
  tuners?:
    | {
        side?: string | undefined
        postHoleMm?: number | undefined
        buttonMm?: number | undefined
        stringHeightMm?: number | undefined
      }
    | undefined
  anchors?:
    | {
        kind?: string | undefined
        bodyMm?: number | undefined
        stringHoleMm?: number | undefined
        /** Where the string leaves it, above the playing face. */
        heightMm: number
      }
    | undefined
}

export interface NeckOutline {
  nutWidthMm: number
  tailWidthMm: number
  /** Where the stick ends; the bridge line where that is not known. */
  tailMm: number
  /** Where it ends is not known. */
  isOpen: boolean
  /** Playing face to back, all layers. */
  thicknessMm: number
  joins: string
  /** Playing face above the top at the box’s edge. */
  aboveTopMm?: number | undefined
  tiltDeg: number
  fingerboard?:
    | {
        fromMm: number
        toMm: number
        thicknessMm: number
      }
    | undefined
  roundOver?:
    | {
        radiusMm: number
        fromMm: number
        toMm: number
      }
    | undefined
}

export interface HeadOutline {
  /** Nut line to head end, along its own face. */
  lengthMm: number
  widthMm: number
  thicknessMm: number
  joint: string
  angleDeg: number
  /** Flat behind the nut line before its face goes down. */
  ledgeMm: number
  /** How far its face steps down besides. */
  stepMm: number
  /** Where it does: at the nut or at the ledge. */
  steps: string
}

/**
 * Gather what drawings and templates need of the design and no other concern plans: the outlines of neck and head and
 * the sizes of what stands on them, in mm. A head is drawn as wide as the neck at the nut, since the file gives no
 * other outline. What is not known is absent, or 0 where a drawing then shows a mere line.
 */
export const outline: PlanPart = ({values}, soFar) => {
  const model = neckModel(values, soFar)
  const neck = model && neckOutline(values, soFar, model)
  if (!neck) return {}
  const head = headOutline(model, neck)
  const parts: Outline = {
    neck,
    ...(head && {head}),
    ...(values.nut && {nut: nutOutline(values)}),
    ...(soFar.bridge && {bridge: bridgeOutline(values, soFar.bridge.stationMm)}),
    ...(values.tuners && {tuners: tunerSizes(values.tuners)}),
    ...(values.anchors && {anchors: anchorSizes(values.anchors)}),
  }
  return {outline: parts}
}

function neckOutline(values: BuildValues, soFar: Plan, model: NeckModel): NeckOutline | undefined {
  const {neck, fingerboard} = values
  const joins = neck?.joins?.value ?? 'on top'
  const known = model.tailMm ?? (joins === 'end' ? soFar.box?.atMm : undefined)
  const tailMm = known ?? soFar.scale?.lengthMm
  if (tailMm === undefined || tailMm <= 0) return undefined
  const {radiusMm, fromMm, toMm} = model.roundOver ?? {}
  return {
    nutWidthMm: model.taper.nutMm,
    tailWidthMm: model.taper.tailMm ?? model.taper.nutMm,
    tailMm,
    isOpen: known === undefined,
    thicknessMm: model.layup.totalMm,
    joins,
    ...(neck?.['above-top'] && {aboveTopMm: neck['above-top'].mm}),
    tiltDeg: neck?.angle?.deg ?? 0,
    ...(fingerboard?.thickness && {
      fingerboard: {
        fromMm: fingerboard.from?.mm ?? 0,
        toMm: Math.min(fingerboard.to?.mm ?? tailMm, tailMm),
        thicknessMm: fingerboard.thickness.mm,
      },
    }),
    ...(radiusMm !== undefined &&
      fromMm !== undefined &&
      toMm !== undefined && {roundOver: {radiusMm, fromMm, toMm}}),
  }
}

function headOutline({head}: NeckModel, {nutWidthMm}: NeckOutline): HeadOutline | undefined {
  if (!head) return undefined
  const {joint, angleDeg, lengthMm, ledgeMm, stepMm, thicknessMm} = head
  const steps = joint === 'straight' ? 'at the ledge' : 'at the nut'
  return {lengthMm, widthMm: nutWidthMm, thicknessMm, joint, angleDeg, ledgeMm, stepMm, steps}
}

function nutOutline({nut}: BuildValues) {
  const kind = nut?.kind?.value ?? 'flat'
  return {kind, alongMm: nut?.diameter?.mm ?? 0, grooveMm: nut?.groove?.mm ?? 0}
}

function bridgeOutline(values: BuildValues, stationMm: number) {
  const taper = neckTaper(values)
  const widthMm = taper && neckWidthAt(stationMm, taper)
  const {bridge, spacing} = values
  return {
    lengthMm: bridge?.length?.mm ?? Math.max(widthMm ?? 0, spacing?.bridge?.mm ?? 0),
    footMm: bridge?.foot?.mm ?? 0,
  }
}

const tunerSizes = (tuners: NonNullable<BuildValues['tuners']>) => ({
  ...(tuners.side && {side: tuners.side.value}),
  ...(tuners['post-hole'] && {postHoleMm: tuners['post-hole'].mm}),
  ...(tuners.button && {buttonMm: tuners.button.mm}),
  ...(tuners['string-height'] && {stringHeightMm: tuners['string-height'].mm}),
})

const anchorSizes = (anchors: NonNullable<BuildValues['anchors']>) => ({
  ...(anchors.kind && {kind: anchors.kind.value}),
  ...(anchors.body && {bodyMm: anchors.body.mm}),
  ...(anchors['string-hole'] && {stringHoleMm: anchors['string-hole'].mm}),
  heightMm: anchors.height?.mm ?? 0,
})
