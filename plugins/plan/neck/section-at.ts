import type {NeckSection} from '../shape/neck.ts'
import {type Cut, cutNeck} from './cut-neck.ts'
import type {NeckModel} from './neck-model.ts'

/**
 * Give the neck's section at a station (mm from the nut line): width, thickness, area, neutral axis (mm under the
 * playing face), EI (N·mm²), mass per length and layers. Undefined where the neck has no width or no wood.
 */
export function sectionAt(
  model: NeckModel,
  stationMm: number,
  cut: (stationMm: number) => Cut | undefined = cutNeck(model),
): NeckSection | undefined {
  const found = cut(stationMm)
  if (!found) return undefined
  const {widthMm, thicknessMm, layers, values} = found
  return {
    stationMm,
    thicknessMm,
    widthMm,
    ...values,
    laminations: layers.map(({name = 'wood not given', thicknessMm: own, fromFaceMm, strips}) => {
      const lamination: NeckSection['laminations'][number] = {
        wood: name,
        thicknessMm: own,
        widthMm,
        fromFaceMm,
      }
      if (strips !== undefined) lamination.strips = strips
      return lamination
    }),
  }
}
