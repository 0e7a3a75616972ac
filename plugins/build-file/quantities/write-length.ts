import {inch, inchMm} from '../../tables/units.ts'

export type Rounding = 'nearest' | 'down' | 'up'

/** The unit that is written, and how far apart the marks of the ruler are that is read. */
export interface Ruler {
  units: 'in' | 'mm'
  rulerMm: number
}

/** Finer than most rulers that are worked to: for sizes that are only named. */
export const fineRulers = {
  in: {units: 'in', rulerMm: inch(1 / 64)},
  mm: {units: 'mm', rulerMm: 0.1},
} as const satisfies Record<string, Ruler>

/** Rounding down must not lose a whole mark to the last bit of a number that stands on it. */
const slack = 1e-6

/**
 * Write a length as a maker would, to a mark of the ruler: `3/4 in`, `1 1/2 in`, `-2 1/4 in`, `12.5 mm`.
 * Inches are fractions where the ruler is a half, quarter, … of an inch, else decimals; where the ruler's marks
 * are no round number of the unit, to three decimals of an inch or one of a millimetre.
 * `down` gives no more than the length, `up` no less.
 */
export function writeLength(mm: number, ruler: Ruler, rounding?: Rounding): string {
  return `${writeBare(mm, ruler, rounding)} ${ruler.units}`
}

/** Write a length as writeLength does, without its unit: `1 1/2`. */
export function writeBare(mm: number, {units, rulerMm}: Ruler, rounding: Rounding = 'nearest'): string {
  const unitMm = units === 'in' ? inchMm : 1
  const parts = unitMm / rulerMm
  if (units === 'in' && isPowerOfTwo(parts)) {
    const under = Math.round(parts)
    return fraction(toWhole((mm * under) / inchMm, rounding), under)
  }
  const places = decimals(rulerMm / unitMm)
  const step = places === undefined ? (units === 'in' ? 0.001 : 0.1) : rulerMm / unitMm
  const value = toWhole(mm / unitMm / step, rounding) * step
  return String(Number(value.toFixed(places ?? (units === 'in' ? 3 : 1))) + 0)
}

/**
 * Find the mark of the ruler nearest to a place. `mm` is the mark's own place, `text` as it is read off the
 * ruler: in inches off a ruler that divides the inch, whatever the build's units.
 */
export function nearestMark(mm: number, ruler: Ruler): {mm: number; text: string} {
  const {units, rulerMm} = ruler
  const {perInch, dividesMetre} = divisions(ruler)
  const marks = Math.round(mm / rulerMm)
  const readIn = perInch ? 'in' : dividesMetre ? 'mm' : units
  return {
    mm: placeOf(marks, rulerMm, perInch),
    text: writeLength(marks * rulerMm, {units: readIn, rulerMm}),
  }
}

/** Find only the place (mm) of the mark nearest to a place. */
export function nearestMarkMm(mm: number, ruler: Ruler): number {
  return placeOf(Math.round(mm / ruler.rulerMm), ruler.rulerMm, divisions(ruler).perInch)
}

const placeOf = (marks: number, rulerMm: number, perInch: number | undefined): number =>
  perInch ? inch(marks / perInch) : marks * rulerMm

/** Say how many marks an inch has on a ruler that is read in inches, and whether it divides the metre. */
function divisions({units, rulerMm}: Ruler): {perInch: number | undefined; dividesMetre: boolean} {
  const perInch = Math.round(inchMm / rulerMm)
  const dividesInch = Math.abs(inchMm / rulerMm - perInch) < 1e-9
  const dividesMetre = Math.abs(1000 / rulerMm - Math.round(1000 / rulerMm)) < 1e-6
  return {perInch: dividesInch && !(units === 'mm' && dividesMetre) ? perInch : undefined, dividesMetre}
}

function toWhole(marks: number, rounding: Rounding): number {
  if (rounding === 'down') return Math.floor(marks + slack)
  if (rounding === 'up') return Math.ceil(marks - slack)
  // Half a mark goes up, also where its last bit is lost: 82.55 mm is 82.6.
  return Math.sign(marks) * Math.round(Math.abs(marks) + slack)
}

function isPowerOfTwo(parts: number): boolean {
  const power = Math.log2(parts)
  return power > -slack && Math.abs(power - Math.round(power)) < 1e-9
}

/** The decimals that write a step exactly, up to three. */
function decimals(step: number): number | undefined {
  return [0, 1, 2, 3].find((places) => {
    const scaled = step * 10 ** places
    return Math.round(scaled) > 0 && Math.abs(scaled - Math.round(scaled)) < 1e-9
  })
}

function fraction(count: number, under: number): string {
  const sign = count < 0 ? '-' : ''
  const whole = Math.floor(Math.abs(count) / under)
  let [over, parts] = [Math.abs(count) % under, under]
  while (over > 0 && over % 2 === 0) [over, parts] = [over / 2, parts / 2]
  if (over === 0) return `${sign}${whole}`
  return `${sign}${whole > 0 ? `${whole} ` : ''}${over}/${parts}`
}
