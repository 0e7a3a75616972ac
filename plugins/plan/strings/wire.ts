import type {BuildValues} from '../../build-file/schema/schema.ts'
import {musicWire, musicWireFit, musicWireStiffness} from '../../tables/music-wire.ts'
import {
  type StringMaterial,
  type StringMaterialRow,
  type StringWrap,
  stringMaterials,
  stringWraps,
} from '../../tables/strings.ts'
import {inchMm, ksiMpa} from '../../tables/units.ts'
import {noteFrequencyHz} from '../kit/notes.ts'

export type StringValues = NonNullable<BuildValues['strings']>[number]

/** What a string is made of; diameters in mm. Of a wound string `material` is that of its core. */
export interface Wire {
  diameterMm: number
  wound: boolean
  material?: StringMaterial | undefined
  wrap?: StringWrap | undefined
  coreMm?: number | undefined
  /** The file gives the core; else it is the usual one of the gauge. */
  coreKnown: boolean
}

/** Take from a settled string what it is made of; undefined without a gauge. */
export function stringWire({gauge, core, wrap, material}: StringValues): Wire | undefined {
  if (!gauge) return undefined
  if (!gauge.wound) return {diameterMm: gauge.mm, wound: false, coreKnown: false, material: material?.value}
  return {
    diameterMm: gauge.mm,
    wound: true,
    material: material?.value ?? 'steel',
    coreKnown: core !== undefined && !core.assumed,
    wrap: wrap?.value,
    coreMm: core && core.mm < gauge.mm ? core.mm : undefined,
  }
}

export interface StringMass {
  kgM: number
  from: 'mass' | 'tension' | 'plain' | 'wound'
}

/** Packets print the pull at concert pitch, whatever this build is tuned to. */
const packetReferenceHz = 440

/**
 * Say what a string weighs for its length (kg/m), and where that comes from: the packet's mass, the packet's pull at
 * the scale and note that it prints, or else the string's geometry.
 */
export function stringMass({mass, tension}: StringValues, wire: Wire | undefined): StringMass | undefined {
  if (mass) return {kgM: mass.kgM, from: 'mass'}
  if (tension?.pull && tension.scale && tension.note) {
    const hz = noteFrequencyHz(tension.note.midi, packetReferenceHz)
    return {kgM: massOfPullKgM(tension.pull.n, tension.scale.mm, hz), from: 'tension'}
  }
  const kgM = wire && massPerLengthKgM(wire)
  return kgM === undefined ? undefined : {kgM, from: wire?.wound ? 'wound' : 'plain'}
}

/**
 * Weigh a string by its geometry, in kg/m: a plain one by π/4·ρ·d², a wound one by `roundWoundKgM`.
 * Undefined where it is not known what it is made of.
 */
export function massPerLengthKgM({diameterMm, wound, material, wrap, coreMm}: Wire): number | undefined {
  if (material === undefined) return undefined
  const {densityKgM3} = stringMaterials[material]
  if (!wound) return plainKgM(diameterMm, densityKgM3)
  if (wrap === undefined || coreMm === undefined) return undefined
  return roundWoundKgM(coreMm, densityKgM3, (diameterMm - coreMm) / 2, stringWraps[wrap].densityKgM3)
}

/** Weigh a plain string (diameter in mm, density in kg/m³), in kg/m. */
export function plainKgM(diameterMm: number, densityKgM3: number): number {
  return ((densityKgM3 * Math.PI) / 4) * diameterMm ** 2 * 1e-6
}

/**
 * Weigh a string of round core and one close round wrap (diameters in mm, densities in kg/m³), in kg/m:
 * (π/4)·ρ_c·d_c² + (π²/4)·ρ_w·d_w·(d_c + d_w), one turn of length π(d_c + d_w) for each d_w along the string.
 * The pitch of the turns is neglected, which takes less than 1 % off.
 * Source: geometry; 0.016 in steel under 0.012 in of 8860 kg/m³ gives 5.757 g/m.
 */
export function roundWoundKgM(coreMm: number, coreKgM3: number, wrapMm: number, wrapKgM3: number): number {
  return plainKgM(coreMm, coreKgM3) + (Math.PI ** 2 / 4) * wrapKgM3 * wrapMm * (coreMm + wrapMm) * 1e-6
}

/**
 * Give the pull (N) that brings a string (mass in kg/m) of this length (mm) to its pitch (Hz): T = μ(2Lf)².
 * Source: Mersenne's law; OpenStax University Physics vol. 1, 16.3 and 16.6.
 */
export function stringTensionN(massKgM: number, lengthMm: number, frequencyHz: number): number {
  return massKgM * ((2 * lengthMm * frequencyHz) / 1000) ** 2
}

/** Give the mass per length (kg/m) of a string that pulls so many newtons at this length (mm) and pitch (Hz). */
export function massOfPullKgM(tensionN: number, lengthMm: number, frequencyHz: number): number {
  return tensionN / ((2 * lengthMm * frequencyHz) / 1000) ** 2
}

/** What resists bending and stretching in a string: Young's modulus (MPa) of a round section (diameter in mm). */
export interface StringStiffness {
  /** Young’s modulus. */
  stiffnessMpa: number
  /** Diameter of what resists bending: the string, or its core. */
  sectionMm: number
}

/**
 * Say how stiff a string is. A `stiffness` of its own belongs to the whole section; else a plain string has its
 * material's, and a wound one that of its core alone: the wrap's turns hardly resist (Zollner, Physics of the
 * Electric Guitar, 1.2). Undefined where the material or the core is not known.
 */
export function stringStiffness(
  {stiffness}: Pick<StringValues, 'stiffness'>,
  {diameterMm, wound, material, coreMm}: Wire,
): StringStiffness | undefined {
  if (stiffness) return {stiffnessMpa: stiffness.mpa, sectionMm: diameterMm}
  const sectionMm = wound ? coreMm : diameterMm
  if (material === undefined || sectionMm === undefined) return undefined
  const row: StringMaterialRow = stringMaterials[material]
  return {stiffnessMpa: row.stiffnessMpa ?? steelStiffnessMpa(sectionMm), sectionMm}
}

/** Give Young's modulus (MPa) of music wire of this diameter (mm). Source: as in the table of music wire. */
export function steelStiffnessMpa(diameterMm: number): number {
  const {thinUpToIn, thinMpa, thickMpa} = musicWireStiffness
  return diameterMm <= thinUpToIn * inchMm + 1e-9 ? thinMpa : thickMpa
}

/**
 * Give the least tensile strength (MPa) of music wire of this diameter (mm): the standard's table, in a straight
 * line between its rows; outside it the handbook's fit A/d^m, which runs 1 to 2.5 % above the least.
 * Source: as in the table of music wire.
 */
export function wireStrengthMpa(diameterMm: number): number {
  const diameterIn = diameterMm / inchMm
  // The last bit of a converted inch must not throw a tabled diameter out of the table.
  const upper = musicWire.findIndex((row) => diameterIn <= row.diameterIn + 1e-9)
  const above = musicWire[upper]
  const below = musicWire[Math.max(0, upper - 1)]
  if (!above || !below || diameterIn < musicWire[0]!.diameterIn - 1e-9)
    return musicWireFit.aMpa / diameterMm ** musicWireFit.exponent
  const part = above === below ? 0 : (diameterIn - below.diameterIn) / (above.diameterIn - below.diameterIn)
  return (below.minKsi + part * (above.minKsi - below.minKsi)) * ksiMpa
}
