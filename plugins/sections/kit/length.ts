import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {measure} from './measure.ts'
import type {Measure} from './nodes.ts'

/** What lengths are written by: the build's units and the finest mark of its ruler. */
export type Ruler = Pick<Plan, 'units' | 'rulerMm'>

/**
 * Write a length (mm) for the page: the build's units to its ruler, then the other in smaller type,
 * `11 1/2 in (292.1 mm)` or `292 mm (11 1/2 in)`. `rounding` as in writeLength.
 */
export function length(mm: number, ruler: Ruler, rounding: Rounding = 'nearest'): Measure {
  return measure(...both(mm, ruler, rounding))
}

/** Write the same length as plain text, both units: for alt texts, titles and drawings' words. */
export function lengthPlain(mm: number, ruler: Ruler, rounding: Rounding = 'nearest'): string {
  const [first, second] = both(mm, ruler, rounding)
  return `${first} (${second})`
}

/** Write a length in the build's units alone, for crowded tables and inside sentences. */
export function lengthAlone(mm: number, ruler: Ruler, rounding: Rounding = 'nearest'): Measure {
  return measure(written(mm, ruler, rounding))
}

type Rounding = 'nearest' | 'down' | 'up'

// The second unit is for comparing, not for marking out: a tenth of a millimetre, or 1/64 in.
const other = {in: {units: 'mm', rulerMm: 0.1}, mm: {units: 'in', rulerMm: 25.4 / 64}} as const

function both(mm: number, ruler: Ruler, rounding: Rounding): [string, string] {
  return [written(mm, ruler, rounding), written(mm, other[ruler.units], rounding)]
}

/** A page has the true minus sign, which a build file may have too. */
function written(...[mm, ruler, rounding]: Parameters<typeof writeLength>): string {
  return writeLength(mm, ruler, rounding).replace('-', '−')
}
