import {type CrossSectionLayer, type CrossSectionValues, crossSection} from './cross-section.ts'
import type {NeckLayer} from './layers.ts'
import type {NeckModel, NeckPlace} from './model.ts'
import {roundAtMm} from './round-over.ts'
import {neckWidthAt} from './taper.ts'

/** The neck cut across at one place, as the plan shows it; mm from the nut line and from the playing face. */
export interface NeckCrossSection {
  stationMm: number
  /** What is there. */
  what?: NeckPlace | undefined
  widthMm: number
  thicknessMm: number
  areaMm2: number
  /** From the playing face. */
  neutralAxisMm?: number | undefined
  /** Absent until the woods are known. */
  eiNmm2?: number | undefined
  massPerLengthKgM?: number | undefined
  laminations: {
    /** As written; none where the file does not give it. */
    wood?: string | undefined
    thicknessMm: number
    widthMm: number
    fromFaceMm: number
    /** Glued up from so many side by side. */
    strips?: number | undefined
  }[]
}

/** Cut the neck at the nut, in the middle of the free neck, at the box's edge and wherever it changes. */
export function planCrossSections({changes}: NeckModel, cut: Cutter): NeckCrossSection[] | undefined {
  const sections = changes.flatMap(({stationMm, what}) => {
    const section = crossSectionAt(stationMm, cut)
    return section ? [{...section, what}] : []
  })
  return sections.length > 0 ? sections : undefined
}

/** Give the neck's cross-section at a station (mm from the nut line); undefined where it has no width or no wood. */
export function crossSectionAt(stationMm: number, cut: Cutter): NeckCrossSection | undefined {
  const found = cut(stationMm)
  if (!found) return undefined
  const {widthMm, thicknessMm, layers, values} = found
  return {
    stationMm,
    thicknessMm,
    widthMm,
    ...values,
    laminations: layers.map(({name: wood, thicknessMm: own, fromFaceMm, strips}) => ({
      wood,
      thicknessMm: own,
      widthMm,
      fromFaceMm,
      strips,
    })),
  }
}

/** Which stiffness of a wood's range to use. */
export type Stiffness = 'middle' | 'low' | 'high'

/** The neck cut across: its layers there, how thick they are together, and what the section is worth. */
export interface Cut {
  values: CrossSectionValues
  widthMm: number
  roundMm: number
  thicknessMm: number
  layers: readonly NeckLayer[]
}

/** Cuts the neck at a station (mm from the nut line); undefined where it has no width or no wood. */
export type Cutter = (stationMm: number) => Cut | undefined

/**
 * Cut the neck across at any station; where a layer ends, the cut is on the bridge's side. A cut like the one before it,
 * or at a station that was asked for before, is not computed again.
 */
export function cutNeck(model: NeckModel, stiffness: Stiffness = 'middle'): Cutter {
  const all = model.layersAlong
  const stiff = new Map(all.map((layer) => [layer, withStiffness(layer, stiffness)]))
  const known = new Map<number, Cut>()
  let last: Cut | undefined
  return (stationMm) => {
    const before = known.get(stationMm)
    if (before) return before
    const widthMm = neckWidthAt(stationMm, model.taper)
    const roundMm = model.roundOver ? roundAtMm(model.roundOver, stationMm) : 0
    if (last?.widthMm === widthMm && last?.roundMm === roundMm && areThere(last.layers, all, stationMm))
      return last
    const layers = all.filter((layer) => isThere(layer, stationMm))
    const back = layers.at(-1)
    if (widthMm === undefined || !back) return undefined
    const backMm = back.fromFaceMm + back.thicknessMm
    const isBoard = layers[0]!.of === 'fingerboard'
    const faceRadiusMm = isBoard ? model.faceRadiusMm : undefined
    const values = crossSection(
      {widthMm, heightMm: backMm, roundMm, faceRadiusMm},
      layers.map((layer) => stiff.get(layer)!),
    )
    const thicknessMm = backMm - layers[0]!.fromFaceMm
    last = values.areaMm2 > 0 ? {values, widthMm, roundMm, thicknessMm, layers} : undefined
    if (last) known.set(stationMm, last)
    return last
  }
}

/** Cut a neck that differs from another only between the walls of its box (`deepened`): elsewhere it is cut as that is. */
export function cutDeepened(model: NeckModel, cut: Cutter): Cutter {
  const [fromMm, toMm] = model.inside?.clear ?? [0, 0]
  const own = cutNeck(model)
  return (stationMm) => (stationMm >= fromMm && stationMm < toMm ? own(stationMm) : cut(stationMm))
}

const isThere = ({fromMm, toMm, thicknessMm}: NeckLayer, stationMm: number) =>
  fromMm <= stationMm && stationMm < toMm && thicknessMm > 0

/** Tell whether these are all the layers at a station. */
function areThere(some: readonly NeckLayer[], all: readonly NeckLayer[], stationMm: number): boolean {
  let count = 0
  for (const layer of all) if (isThere(layer, stationMm) && layer !== some[count++]) return false
  return count === some.length
}

function withStiffness(
  {fromFaceMm, thicknessMm, densityKgM3, eMpa, eRangeMpa}: NeckLayer,
  stiffness: Stiffness,
): CrossSectionLayer {
  const e = stiffness === 'middle' ? eMpa : eRangeMpa?.[stiffness === 'low' ? 0 : 1]
  return {fromFaceMm, thicknessMm, densityKgM3, eMpa: e}
}
