import {neckWidthAt} from '../neck-width-at.ts'
import type {NeckSection} from '../shape/neck.ts'
import {crossSection} from './cross-section.ts'
import type {NeckModel} from './neck-model.ts'
import {roundAtMm} from './round-over.ts'

/** Which stiffness of a wood's range to use. */
export type Stiffness = 'middle' | 'low' | 'high'

/**
 * Cut the neck across at a station (mm from the nut line): width, thickness, area, neutral axis (mm under the playing
 * face), EI (N·mm²) and mass per length. Where a layer ends, the cut is on the bridge's side. Undefined where the
 * neck has no width or no wood.
 */
export function sectionAt(
  model: NeckModel,
  stationMm: number,
  stiffness: Stiffness = 'middle',
): NeckSection | undefined {
  const widthMm = neckWidthAt(stationMm, model.taper)
  const layers = model.layup.layers.filter(
    ({fromMm, toMm, thicknessMm}) => fromMm <= stationMm && stationMm < toMm && thicknessMm > 0,
  )
  const first = layers[0]
  const last = layers.at(-1)
  if (widthMm === undefined || !first || !last) return undefined
  const backMm = last.fromFaceMm + last.thicknessMm
  const isCrowned = first.of === 'fingerboard' && model.faceRadiusMm !== undefined
  const outline = {
    widthMm,
    heightMm: backMm,
    roundMm: model.roundOver ? roundAtMm(model.roundOver, stationMm) : 0,
    ...(isCrowned && {faceRadiusMm: model.faceRadiusMm!}),
  }
  const values = crossSection(
    outline,
    layers.map(({eMpa, eRangeMpa, ...layer}) => {
      const e = stiffness === 'middle' ? eMpa : eRangeMpa?.[stiffness === 'low' ? 0 : 1]
      return {...layer, ...(e !== undefined && {eMpa: e})}
    }),
  )
  if (!(values.areaMm2 > 0)) return undefined
  return {
    stationMm,
    widthMm,
    thicknessMm: backMm - first.fromFaceMm,
    ...values,
    laminations: layers.map(({name, thicknessMm, fromFaceMm, strips}) => ({
      wood: name ?? 'wood not given',
      thicknessMm,
      widthMm,
      fromFaceMm,
      ...(strips !== undefined && {strips}),
    })),
  }
}
