import type {WouldDo} from '../kit/would-do.ts'
import {type Layup, type NeckLayer, planingMostMm} from '../neck-shape/layers.ts'

/** The layers of the neck, and what its laminations come to, in mm. */
export interface NeckLayup {
  /** From the playing face down. */
  layers: LayerPlan[]
  /** Without fingerboard and cap. */
  stickMm: number
  /** Playing face to back. */
  totalMm: number
  laminationsMm?: number | undefined
  wantedMm?: number | undefined
  planedMm?: number | undefined
  overMm?: number | undefined
  mostOverMm?: number | undefined
  /** The thickness that some lamination would need. */
  wouldDo?: WouldDo | undefined
}

interface LayerPlan {
  /** Its path in the build file. */
  of: string
  wood?: string | undefined
  /** Its density and stiffness are known. */
  isWoodKnown: boolean
  /** As planed. */
  thicknessMm: number
  fromMm?: number | undefined
  toMm?: number | undefined
  beforeScarf: boolean
  strips?: number | undefined
}

const slackMm = 1e-6

/**
 * List the layers from the playing face down. Compare what the laminations come to with the thickness they are planed
 * to, and where it is too little, or more than there is to plane, say what the thickest of them would have to be, to a
 * mark of the ruler.
 */
export function planLayup(layup: Layup, rulerMm: number): NeckLayup {
  const {stickMm, totalMm, laminationsMm, wantedMm} = layup
  const layers = layup.layers.map(listed)
  if (laminationsMm === undefined) return {layers, stickMm, totalMm}
  const overMm = laminationsMm - wantedMm
  const fits = overMm >= -slackMm && overMm <= planingMostMm + slackMm
  return {
    layers,
    stickMm,
    totalMm,
    laminationsMm,
    wantedMm,
    planedMm: laminationsMm - stickMm,
    overMm,
    mostOverMm: planingMostMm,
    wouldDo: fits ? undefined : otherThickness(layup, overMm, rulerMm),
  }
}

function listed({of, name, eMpa, thicknessMm, fromMm, toMm, isSawn, strips}: NeckLayer): LayerPlan {
  return {
    of,
    wood: name,
    isWoodKnown: eMpa !== undefined,
    thicknessMm,
    fromMm: Number.isFinite(fromMm) ? fromMm : undefined,
    toMm: Number.isFinite(toMm) ? toMm : undefined,
    beforeScarf: isSawn,
    strips,
  }
}

function otherThickness({layers}: Layup, overMm: number, rulerMm: number): WouldDo | undefined {
  const [first, ...rest] = layers.filter(({of, runs}) => runs && of.startsWith('neck.laminations.'))
  if (!first) return undefined
  const thickest = rest.reduce((best, one) => (one.bareMm > best.bareMm ? one : best), first)
  const mm = Math.ceil((thickest.bareMm - overMm) / rulerMm - slackMm) * rulerMm
  return mm > 0 ? {path: `${thickest.of}.thickness`, mm} : undefined
}
