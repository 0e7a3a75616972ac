import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Bridge} from '../action/bridge.ts'
import type {HeadProfile} from '../neck-shape/head-shape.ts'
import type {InsideBox} from '../neck-shape/inside.ts'
import type {NeckModel} from '../neck-shape/model.ts'
import {type NeckTaper, neckWidthAt} from '../neck-shape/taper.ts'
import type {Scale} from '../scale/scale.ts'

// What a drawing needs of the design besides what other concerns plan: mm from the nut line and off the centre line.

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
  /** Where one that runs through a box is cut down: places from the nut, and how deep under the playing face it starts. */
  cutDown?: readonly {fromMm: number; toMm: number; deepMm: number}[] | undefined
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

export interface HeadOutline extends HeadProfile {
  /** Nut line to head end, along its own face. */
  lengthMm: number
  widthMm: number
  thicknessMm: number
  joint: string
  /** How far its face steps down besides. */
  stepMm: number
}

/** What the outlines are taken from. */
interface Design {
  model: NeckModel | undefined
  taper: NeckTaper | undefined
  scale: Pick<Scale, 'lengthMm'> | undefined
  bridge: Bridge | undefined
}

/**
 * Gather the outlines of neck and head and the sizes of what stands on them. A head is drawn as wide as the neck at
 * the nut, since the file gives no other outline. What is not known is absent, or 0 where a drawing then shows a mere
 * line.
 */
export function planOutline(values: BuildValues, design: Design): Outline | undefined {
  const {model, taper, scale, bridge} = design
  const neck = model && neckOutline(values, model, scale?.lengthMm)
  if (!neck) return undefined
  return {
    neck,
    head: headOutline(model, neck),
    nut: values.nut && nutOutline(values),
    bridge: bridge && bridgeOutline(values, bridge.stationMm, taper),
    tuners: values.tuners && tunerSizes(values.tuners),
    anchors: values.anchors && anchorSizes(values.anchors),
  }
}

function neckOutline(
  {neck, fingerboard}: BuildValues,
  model: NeckModel,
  scaleMm: number | undefined,
): NeckOutline | undefined {
  const joins = neck?.joins?.value ?? 'on top'
  const known = model.tailMm ?? (joins === 'end' ? model.boxAtMm : undefined)
  const tailMm = known ?? scaleMm
  if (tailMm === undefined || tailMm <= 0) return undefined
  const {radiusMm, fromMm, toMm} = model.roundOver ?? {}
  return {
    nutWidthMm: model.taper.nutMm,
    tailWidthMm: model.taper.tailMm ?? model.taper.nutMm,
    tailMm,
    isOpen: known === undefined,
    thicknessMm: model.layup.totalMm,
    joins,
    aboveTopMm: neck?.['above-top']?.mm,
    tiltDeg: neck?.angle?.deg ?? 0,
    cutDown: model.inside && cutDown(model.inside),
    fingerboard: fingerboard?.thickness && {
      fromMm: fingerboard.from?.mm ?? 0,
      toMm: Math.min(fingerboard.to?.mm ?? tailMm, tailMm),
      thicknessMm: fingerboard.thickness.mm,
    },
    roundOver:
      radiusMm === undefined || fromMm === undefined || toMm === undefined
        ? undefined
        : {radiusMm, fromMm, toMm},
  }
}

/** Where a neck is cut down to run through a box: under the top in its walls, and for daylight between them. */
function cutDown({box, clear, underTopMm, surfaceMm, totalMm}: InsideBox) {
  const surface = Math.min(surfaceMm, totalMm)
  return [
    {fromMm: box[0], toMm: clear[0], deepMm: Math.min(underTopMm, totalMm)},
    {fromMm: clear[0], toMm: clear[1], deepMm: surface},
    {fromMm: clear[1], toMm: box[1], deepMm: Math.min(underTopMm, totalMm)},
  ]
}

function headOutline({head}: NeckModel, {nutWidthMm}: NeckOutline): HeadOutline | undefined {
  if (!head) return undefined
  const {joint, angleDeg, lengthMm, ledgeMm, flatToMm, stepMm, steps, thicknessMm} = head
  return {lengthMm, widthMm: nutWidthMm, thicknessMm, joint, angleDeg, ledgeMm, flatToMm, stepMm, steps}
}

function nutOutline({nut, frets}: BuildValues) {
  const {kind, diameter, groove} = nut ?? {}
  if (kind?.value === 'zero-fret')
    return {kind: kind.value, alongMm: frets?.['wire-width']?.mm ?? 0, grooveMm: 0}
  return {kind: kind?.value ?? 'flat', alongMm: diameter?.mm ?? 0, grooveMm: groove?.mm ?? 0}
}

function bridgeOutline({bridge, spacing}: BuildValues, stationMm: number, taper: NeckTaper | undefined) {
  const widthMm = taper && neckWidthAt(stationMm, taper)
  return {
    lengthMm: bridge?.length?.mm ?? Math.max(widthMm ?? 0, spacing?.bridge?.mm ?? 0),
    footMm: bridge?.foot?.mm ?? 0,
  }
}

const tunerSizes = (tuners: NonNullable<BuildValues['tuners']>) => ({
  side: tuners.side?.value,
  postHoleMm: tuners['post-hole']?.mm,
  buttonMm: tuners.button?.mm,
  stringHeightMm: tuners['string-height']?.mm,
})

const anchorSizes = (anchors: NonNullable<BuildValues['anchors']>) => ({
  kind: anchors.kind?.value,
  bodyMm: anchors.body?.mm,
  stringHoleMm: anchors['string-hole']?.mm,
  heightMm: anchors.height?.mm ?? 0,
})
