/**
 * What plain strings, and the cores of wound ones, are made of. `feel` says which scale of pull a player judges
 * the string by. Steel's stiffness is in the music wire table, since it goes by the diameter.
 */
export interface StringMaterialRow {
  densityKgM3: number
  densitySource: string
  /** Young's modulus where one figure serves; a string's own `stiffness` wins. */
  stiffnessMpa?: number
  stiffnessSource?: string
  feel: 'steel' | 'nylon'
}

// biome-ignore format: a line each
export const stringMaterials = {
  steel: {densityKgM3: 7850, densitySource: 'EN 10270-1', feel: 'steel'},
  nylon: {densityKgM3: 1070, densitySource: 'from memory, nylon 6/12; finished strings run about 1000', stiffnessMpa: 5000, stiffnessSource: 'OpenStax College Physics, Table 5.3; strings run from 3.4 to 8.3 GPa', feel: 'nylon'},
  fluorocarbon: {densityKgM3: 1780, densitySource: 'from memory, PVDF', stiffnessMpa: 5000, stiffnessSource: 'taken as nylon: common practice, no source', feel: 'nylon'},
  gut: {densityKgM3: 1300, densitySource: 'from memory', stiffnessMpa: 5000, stiffnessSource: 'taken as nylon: common practice, no source', feel: 'nylon'},
  'phosphor bronze': {densityKgM3: 8860, densitySource: 'alloy data sheets after ASTM B139, C51000: 0.320 lb/in³', stiffnessMpa: 103_400, stiffnessSource: 'Shigley’s Mechanical Engineering Design, Table 10-5, wire B159', feel: 'steel'},
  brass: {densityKgM3: 8440, densitySource: 'OpenStax University Physics vol. 1, Table 14.1', stiffnessMpa: 90_000, stiffnessSource: 'OpenStax University Physics vol. 1, Table 12.1', feel: 'steel'},
} as const satisfies Record<string, StringMaterialRow>

export type StringMaterial = keyof typeof stringMaterials
