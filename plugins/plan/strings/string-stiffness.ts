import {musicWireStiffness} from '../../tables/music-wire.ts'
import {type StringMaterialRow, stringMaterials} from '../../tables/strings.ts'
import type {StringValues, Wire} from './string-wire.ts'

/** What resists bending and stretching in a string: Young's modulus (MPa) of a round section (diameter in mm). */
export interface StringStiffness {
  stiffnessMpa: number
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
  return diameterMm <= thinUpToIn * 25.4 + 1e-9 ? thinMpa : thickMpa
}
