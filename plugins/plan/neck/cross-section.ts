import {type Outline, widthMoments} from './width-moments.ts'

/** A layer of a section: between two depths (mm) from the face, its stiffness and density where they are known. */
export interface SectionLayer {
  fromFaceMm: number
  thicknessMm: number
  eMpa?: number
  densityKgM3?: number
}

export interface SectionValues {
  areaMm2: number
  /** From the playing face; absent where layers of unknown stiffness lie on one another. */
  neutralAxisMm?: number
  eiNmm2?: number
  massPerLengthKgM?: number
}

/**
 * Give a laminated section's area, neutral axis, stiffness in bending EI (N·mm²) and mass per length, each layer
 * within the outline: every layer counts by its own E (transformed section).
 * Maple, walnut, maple of 6.35 mm each, 38 mm wide: axis at 9.525 mm, EI 2.750·10⁸.
 * Source: Gere & Goodno, Mechanics of Materials, ch. 6.
 */
export function crossSection(outline: Outline, layers: readonly SectionLayer[]): SectionValues {
  const parts = layers.map((layer) => ({
    ...layer,
    moments: widthMoments(outline, layer.fromFaceMm, layer.fromFaceMm + layer.thicknessMm),
  }))
  const sum = (of: (part: (typeof parts)[number]) => number) =>
    parts.reduce((total, part) => total + of(part), 0)
  const areaMm2 = sum(({moments}) => moments[0])
  const isStiff = parts.every(({eMpa}) => eMpa !== undefined)
  const isWeighed = parts.every(({densityKgM3}) => densityKgM3 !== undefined)
  const mass = isWeighed && {
    massPerLengthKgM: sum(({moments, densityKgM3}) => moments[0] * densityKgM3!) * 1e-6,
  }
  if (!isStiff) {
    const isPlain = parts.length === 1 && areaMm2 > 0
    return {areaMm2, ...(isPlain && {neutralAxisMm: parts[0]!.moments[1] / areaMm2}), ...mass}
  }
  const ea = sum(({moments, eMpa}) => eMpa! * moments[0])
  if (!(ea > 0)) return {areaMm2, ...mass}
  const neutralAxisMm = sum(({moments, eMpa}) => eMpa! * moments[1]) / ea
  const eiNmm2 = sum(({moments, eMpa}) => eMpa! * moments[2]) - ea * neutralAxisMm ** 2
  return {areaMm2, neutralAxisMm, eiNmm2, ...mass}
}
