import type {BuildValues} from '../../build-file/schema.ts'
import {inch} from '../../tables/units.ts'
import type {Settled} from '../settled.ts'
import {leastMark, type WouldDo} from '../would-do.ts'
import {type NeckEnds, type NeckModel, neckModel} from './model.ts'

/** How far a neck may grow in search of one that is stiff enough (mm). */
const mostGrowthMm = inch(2)

/**
 * Find the one size to change, and the least mark of the ruler it must come to, for the neck to be stiff enough: the
 * thickness, the thickest lamination where the thickness is their sum, or the width where laminations and thickness
 * are both given. Undefined where nothing within 2 in does.
 */
export function stiffenedNeck(
  {values, rulerMm}: Settled,
  ends: NeckEnds,
  isStiffEnough: (model: NeckModel) => boolean,
): WouldDo | undefined {
  const size = sizeToChange(values)
  if (!size) return undefined
  const first = Math.floor(size.fromMm / rulerMm + 1e-6) + 1
  const last = Math.floor((size.fromMm + mostGrowthMm) / rulerMm)
  const mark = leastMark([first, last], (one) => {
    const model = neckModel(size.set(one * rulerMm), ends)
    return model !== undefined && isStiffEnough(model)
  })
  return mark === undefined ? undefined : {path: size.path, mm: mark * rulerMm}
}

function sizeToChange(values: BuildValues) {
  const {neck} = values
  if (!neck?.thickness || !neck.width?.nut) return undefined
  const {thickness, width, laminations} = neck
  const withNeck = (changed: Partial<typeof neck>): BuildValues => ({...values, neck: {...neck, ...changed}})
  const saysTwice = neck.joins?.value === 'on top' && neck['above-top'] && !neck['above-top'].assumed
  if (!laminations && !saysTwice)
    return {
      path: 'neck.thickness',
      fromMm: thickness.mm,
      set: (mm: number) => withNeck({thickness: {...thickness, mm}}),
    }
  if (laminations?.every((layer) => layer.thickness) && thickness.assumed && !saysTwice) {
    const sizes = laminations.map((layer) => layer.thickness!.mm)
    const i = sizes.indexOf(Math.max(...sizes))
    const thicken = (mm: number) =>
      laminations.map((layer, k) => (k === i ? {...layer, thickness: {...layer.thickness!, mm}} : layer))
    return {
      path: `neck.laminations.${i + 1}.thickness`,
      fromMm: sizes[i]!,
      set: (mm: number) =>
        withNeck({laminations: thicken(mm), thickness: {...thickness, mm: thickness.mm + mm - sizes[i]!}}),
    }
  }
  return {
    path: width.tail ? 'neck.width.nut' : 'neck.width',
    fromMm: width.nut!.mm,
    set: (mm: number) => withNeck({width: {...width, nut: {...width.nut!, mm}}}),
  }
}
