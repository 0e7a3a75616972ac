import type {BuildValues} from '../../build-file/schema.ts'
import {layerWood} from './layer-wood.ts'
import {type BareLayer, stickLayers} from './stick-layers.ts'

/** A layer in its place: how deep (mm) under the playing face it starts. */
export interface NeckLayer extends BareLayer {
  fromFaceMm: number
  /** Before planing. */
  bareMm: number
  /** Runs along the free neck. */
  runs: boolean
}

export interface Layup {
  layers: NeckLayer[]
  /** The stick without fingerboard and cap. */
  stickMm: number
  /** Playing face to back. */
  totalMm: number
  /** What the laminations that run along the free neck come to, before planing. */
  laminationsMm?: number
  /** What they should come to. */
  wantedMm: number
}

/** What laminations may come to above the thickness, to be planed off (mm): common practice, no source. */
export const planingMostMm = 25.4 / 8

const slackMm = 1e-6

/**
 * Stack the neck's layers from the playing face down: fingerboard, cap, laminations or the solid stick. `thickness`
 * runs from the playing face to the back; laminations that come to it by themselves carry fingerboard and cap on top
 * of it. What they come to above it is planed off the back. `midMm` is a station on the free neck, to tell layers
 * that run along it from those that do not. Undefined without a thickness.
 */
export function neckLayers({neck, fingerboard, head}: BuildValues, midMm: number): Layup | undefined {
  if (!neck?.thickness) return undefined
  const ledgeMm = head?.ledge?.mm ?? 0
  const sheets: BareLayer[] = [
    ...sheet('fingerboard', fingerboard, fingerboard?.from?.mm ?? 0, fingerboard?.to?.mm),
    ...sheet('neck.cap', neck.cap, -ledgeMm),
  ]
  const sheetsMm = total(sheets)
  const stick = stickLayers(neck, {ledgeMm, solidMm: Math.max(neck.thickness.mm - sheetsMm, 0)})
  const running = stick.filter(({fromMm, toMm}) => fromMm <= midMm && toMm >= midMm)
  const sumMm = total(running)
  const isLaminated = neck.laminations !== undefined && stick[0]!.of !== 'neck'
  const thicknessMm = isLaminated && neck.thickness.assumed ? sumMm : neck.thickness.mm
  const carries =
    isLaminated && sumMm >= thicknessMm - slackMm && sumMm + sheetsMm > thicknessMm + planingMostMm
  const wantedMm = carries ? thicknessMm : Math.max(thicknessMm - sheetsMm, 0)
  const planedMm = isLaminated ? Math.max(0, Math.min(sumMm - wantedMm, planingMostMm)) : 0

  let fromFaceMm = 0
  const layers = [...sheets, ...stick].map((layer): NeckLayer => {
    const bareMm = layer.thicknessMm
    const thicknessMm = Math.max(bareMm - (layer === running.at(-1) ? planedMm : 0), 0)
    const placed = Object.assign(layer, {fromFaceMm, bareMm, runs: running.includes(layer), thicknessMm})
    fromFaceMm += thicknessMm
    return placed
  })
  const stickMm = sumMm - planedMm
  return {
    layers,
    stickMm,
    totalMm: sheetsMm + stickMm,
    wantedMm,
    ...(isLaminated && {laminationsMm: sumMm}),
  }
}

const total = (layers: readonly BareLayer[]) => layers.reduce((sum, {thicknessMm}) => sum + thicknessMm, 0)

function sheet(of: string, part: BuildValues['fingerboard'], fromMm: number, toMm?: number): BareLayer[] {
  if (!part?.thickness) return []
  return [
    {
      of,
      ...layerWood(part),
      thicknessMm: part.thickness.mm,
      fromMm,
      toMm: toMm ?? Number.POSITIVE_INFINITY,
      isSawn: false,
    },
  ]
}
