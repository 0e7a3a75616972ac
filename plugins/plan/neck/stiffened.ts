import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import type {Settled} from '../kit/settled.ts'
import {leastMark, type WouldDo} from '../kit/would-do.ts'
import {type NeckEnds, type NeckModel, neckModel} from '../neck-shape/model.ts'

/** How far a neck may grow in search of one that is stiff enough (mm). */
const mostGrowthMm = inch(2)

/** How many times as stiff a neck had to be, and how thick it is where it bends most (mm): where a search begins. */
interface Lacks {
  times: number
  thickMm: number
}

/**
 * Find the one size to change, and the least mark of the ruler it must come to, for the neck to be stiff enough: the
 * thickness, the thickest lamination where the thickness is their sum, or the width where laminations and thickness
 * are both given. Undefined where nothing within 2 in does. EI grows with the width, and with the cube of the thickness.
 */
export function stiffenedNeck(
  {values, rulerMm}: Settled,
  ends: NeckEnds,
  isStiffEnough: (model: NeckModel) => boolean,
  lacks: Lacks | undefined,
): WouldDo | undefined {
  const size = sizeToChange(values)
  if (!size) return undefined
  const first = Math.floor(size.fromMm / rulerMm + 1e-6) + 1
  const last = Math.floor((size.fromMm + mostGrowthMm) / rulerMm)
  const does = (one: number) => {
    const model = neckModel(size.set(one * rulerMm), ends)
    return model !== undefined && isStiffEnough(model)
  }
  const mark = leastMark([first, last], does, lacks && guessed(size, lacks, rulerMm))
  return mark === undefined ? undefined : {path: size.path, mm: mark * rulerMm}
}

/** Guess the mark of the ruler at which a size is enough. */
function guessed({path, fromMm}: {path: string; fromMm: number}, {times, thickMm}: Lacks, rulerMm: number) {
  const growsMm = path.startsWith('neck.width') ? (times - 1) * fromMm : (Math.cbrt(times) - 1) * thickMm
  const marks = Math.ceil((fromMm + growsMm) / rulerMm)
  return Number.isFinite(marks) ? marks : undefined
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
