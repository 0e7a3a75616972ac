/*
 * Sources: the inch is 25.4 mm and the pound 0.45359237 kg (international yard and pound agreement, 1959); standard
 * gravity (3rd General Conference on Weights and Measures, 1901); 1200 cents to the octave (Ellis, 1885); SI prefixes.
 */

/** Millimetres of an inch, exact. */
export const inchMm = 25.4

/** Say how many millimetres some inches are: `inch(1 / 4)` → 6.35. */
export const inch = (inches: number): number => inches * inchMm

const inchM = inchMm / 1000
const footM = 0.3048
const poundKg = 0.45359237

/** Kilograms of an ounce, exact. */
export const ounceKg = poundKg / 16

/** Standard gravity, m/s². */
const gravityMs2 = 9.80665

/** Newtons of a pound-force, exact. */
export const poundForceN = poundKg * gravityMs2

/** Megapascals of a thousand pounds-force on a square inch, to the digits that tables of wire are made with. */
export const ksiMpa = 6.894757

/** Say how many cents a ratio of frequencies or of string lengths is: 2 → 1200. */
export const centsOf = (ratio: number): number => 1200 * Math.log2(ratio)

/** Say what ratio of frequencies some cents are: 1200 → 2. */
export const ratioOf = (cents: number): number => 2 ** (cents / 1200)

export const radians = (degrees: number): number => (degrees * Math.PI) / 180

export const degrees = (radians: number): number => (radians * 180) / Math.PI

/**
 * The units a quantity may carry: `words` are its spellings (compared without regard to case), the first the
 * one that is written; `times` is the exact factor to the project's own unit of that kind, as a fraction.
 */
export interface UnitRow {
  words: readonly string[]
  times: readonly [number, number]
}

// biome-ignore format: a unit a line
export const units = {
  /** to mm */
  length: [
    {words: ['in', 'inch', 'inches', '"'], times: [127, 5]},
    {words: ['ft', 'foot', 'feet', "'"], times: [1524, 5]},
    {words: ['mm'], times: [1, 1]},
    {words: ['cm'], times: [10, 1]},
    {words: ['m'], times: [1000, 1]},
  ],
  /** to degrees */
  angle: [{words: ['°', 'deg', 'degree', 'degrees'], times: [1, 1]}],
  /** to minutes */
  duration: [
    {words: ['h', 'hr', 'hrs', 'hour', 'hours'], times: [60, 1]},
    {words: ['min', 'mins', 'minute', 'minutes'], times: [1, 1]},
  ],
  /** to N */
  force: [
    {words: ['N'], times: [1, 1]},
    {words: ['lbf'], times: [poundForceN, 1]},
    {words: ['kgf'], times: [980665, 100000]},
  ],
  /** to kg/m */
  massPerLength: [
    {words: ['g/m'], times: [1, 1000]},
    {words: ['kg/m'], times: [1, 1]},
    {words: ['lb/in'], times: [poundKg, inchM]},
  ],
  /** to MPa */
  stiffness: [
    {words: ['GPa'], times: [1000, 1]},
    {words: ['MPa'], times: [1, 1]},
    {words: ['Mpsi'], times: [poundForceN, inchM * inchM]},
  ],
  /** to kg/m³ */
  density: [
    {words: ['kg/m3'], times: [1, 1]},
    {words: ['g/cm3'], times: [1000, 1]},
    {words: ['lb/ft3'], times: [poundKg, footM * footM * footM]},
  ],
  /** to nF */
  capacitance: [
    {words: ['nF'], times: [1, 1]},
    {words: ['pF'], times: [1, 1000]},
    {words: ['uF', 'µF', 'μF'], times: [1000, 1]},
  ],
} satisfies Record<string, readonly UnitRow[]>
