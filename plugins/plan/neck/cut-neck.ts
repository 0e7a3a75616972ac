import {neckWidthAt} from '../neck-width-at.ts'
import {crossSection, type SectionValues} from './cross-section.ts'
import type {NeckLayer} from './neck-layers.ts'
import type {NeckModel} from './neck-model.ts'
import {roundAtMm} from './round-over.ts'
import type {Outline} from './width-moments.ts'

/** Which stiffness of a wood's range to use. */
export type Stiffness = 'middle' | 'low' | 'high'

/** The neck cut across: its layers there, how deep they reach under the playing face, and what the section is worth. */
export interface Cut {
  values: SectionValues
  widthMm: number
  roundMm: number
  backMm: number
  layers: readonly NeckLayer[]
}

/**
 * Cut the neck across at any station (mm from the nut line); where a layer ends, the cut is on the bridge's side.
 * Undefined where it has no width or no wood. A cut like the one before it is not computed again.
 */
export function cutNeck(
  model: NeckModel,
  stiffness: Stiffness = 'middle',
): (stationMm: number) => Cut | undefined {
  let last: Cut | undefined
  const {layers: all} = model.layup
  const stiff = new Map(all.map((layer) => [layer, withStiffness(layer, stiffness)]))
  return (stationMm) => {
    const widthMm = neckWidthAt(stationMm, model.taper)
    const layers = all.filter(
      (layer) => layer.fromMm <= stationMm && stationMm < layer.toMm && layer.thicknessMm > 0,
    )
    const back = layers.at(-1)
    if (widthMm === undefined || !back) return undefined
    const roundMm = model.roundOver ? roundAtMm(model.roundOver, stationMm) : 0
    const isSame =
      last?.widthMm === widthMm &&
      last.roundMm === roundMm &&
      last.layers.length === layers.length &&
      last.layers.every((layer, i) => layer === layers[i])
    if (isSame) return last
    const backMm = back.fromFaceMm + back.thicknessMm
    const outline: Outline = {widthMm, heightMm: backMm, roundMm}
    if (layers[0]!.of === 'fingerboard' && model.faceRadiusMm !== undefined)
      outline.faceRadiusMm = model.faceRadiusMm
    const values = crossSection(
      outline,
      layers.map((layer) => stiff.get(layer)!),
    )
    last = values.areaMm2 > 0 ? {values, widthMm, roundMm, backMm, layers} : undefined
    return last
  }
}

function withStiffness(
  {fromFaceMm, thicknessMm, densityKgM3, eMpa, eRangeMpa}: NeckLayer,
  stiffness: Stiffness,
) {
  const e = stiffness === 'middle' ? eMpa : eRangeMpa?.[stiffness === 'low' ? 0 : 1]
  return {
    fromFaceMm,
    thicknessMm,
    ...(densityKgM3 !== undefined && {densityKgM3}),
    ...(e !== undefined && {eMpa: e}),
  }
}
