import type {NeckConcern} from './concern.ts'
import {type Layup, type NeckLayer, planingMostMm} from './layers.ts'
import type {Neck} from './neck.ts'
import type {WouldDo} from './stiffened.ts'

const slackMm = 1e-6

/**
 * List the layers from the playing face down. Compare what the laminations come to with the thickness they are planed to (mm), and where it is too little, or more
 * than there is to plane, say what the thickest of them would have to be, to a mark of the ruler.
 */
export const neckLayup: NeckConcern = ({model: {layup}, settled}) => {
  const {stickMm, totalMm, laminationsMm, wantedMm} = layup
  const layers = layup.layers.map(listed)
  if (laminationsMm === undefined) return {layup: {layers, stickMm, totalMm}}
  const overMm = laminationsMm - wantedMm
  const fits = overMm >= -slackMm && overMm <= planingMostMm + slackMm
  const mended = fits ? undefined : otherThickness(layup, overMm, settled.rulerMm)
  return {
    layup: {
      layers,
      stickMm,
      totalMm,
      laminationsMm,
      wantedMm,
      planedMm: laminationsMm - stickMm,
      overMm,
      mostOverMm: planingMostMm,
      ...(mended && {wouldDo: mended}),
    },
  }
}

function listed({of, name, eMpa, thicknessMm, fromMm, toMm, isSawn, strips}: NeckLayer) {
  const layer: NonNullable<Neck['layup']>['layers'][number] = {
    of,
    isWoodKnown: eMpa !== undefined,
    thicknessMm,
    beforeScarf: isSawn,
  }
  if (name !== undefined) layer.wood = name
  if (Number.isFinite(fromMm)) layer.fromMm = fromMm
  if (Number.isFinite(toMm)) layer.toMm = toMm
  if (strips !== undefined) layer.strips = strips
  return layer
}

function otherThickness({layers}: Layup, overMm: number, rulerMm: number): WouldDo | undefined {
  const [first, ...rest] = layers.filter(({of, runs}) => runs && of.startsWith('neck.laminations.'))
  if (!first) return undefined
  const thickest = rest.reduce((best, one) => (one.bareMm > best.bareMm ? one : best), first)
  const mm = Math.ceil((thickest.bareMm - overMm) / rulerMm - slackMm) * rulerMm
  return mm > 0 ? {path: `${thickest.of}.thickness`, mm} : undefined
}
