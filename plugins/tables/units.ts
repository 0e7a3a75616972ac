/**
 * The units a quantity may carry: `words` are its spellings (compared without regard to case), the first the
 * one that is written; `times` is the exact factor to the project's own unit of that kind, as a fraction.
 *
 * Source: the inch is 25.4 mm, the pound 0.45359237 kg (international yard and pound agreement, 1959);
 * standard gravity 9.80665 m/s² (3rd General Conference on Weights and Measures, 1901); SI prefixes.
 */
export interface UnitRow {
  words: readonly string[]
  times: readonly [number, number]
}

const poundKg = 0.45359237
export const poundForceN = 4.4482216152605
const footM = 0.3048
const inchM = 0.0254

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
