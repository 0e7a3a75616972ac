import {fineRulers, type Rounding, writeBare} from '../build-file/quantities/write-length.ts'
import type {Plan} from '../plan/plan.ts'
import {inchMm} from '../tables/units.ts'
import {type Both, bothOf, number} from './quantities.ts'

/** What lengths are written by: the build's units and the finest mark of its ruler. */
export type Ruler = Pick<Plan, 'units' | 'rulerMm'>

/** Write a length (mm) in the build's units, as pages do, with the true minus sign: `−2 1/4 in`, `57 mm`. */
export function lengthWords(mm: number, ruler: Ruler, rounding: Rounding = 'nearest'): string {
  return `${bareLength(mm, ruler, rounding)} ${ruler.units}`
}

/** Write a length (mm) without its unit, where that is said once for many: `11 1/2`. */
export function bareLength(mm: number, ruler: Ruler, rounding: Rounding = 'nearest'): string {
  return writeBare(mm, ruler, rounding).replace('-', '−')
}

// The second unit is for comparing, not for marking out: a tenth of a millimetre, or 1/64 in.
const other = {in: fineRulers.mm, mm: fineRulers.in} as const

/** Write a length (mm) in the build's units to its ruler, and in the other: `11 1/2 in` and `292.1 mm`. */
export function lengthBoth(mm: number, ruler: Ruler, rounding: Rounding = 'nearest'): Both {
  return [lengthWords(mm, ruler, rounding), lengthWords(mm, other[ruler.units], rounding)]
}

/** Give the ruler that a saddle is placed by: finer than a neck is marked by, since less than a millimetre is heard. */
export function saddleRuler({units}: Pick<Plan, 'units'>): Ruler {
  return fineRulers[units]
}

/** Write what no ruler shows, to so many digits of an inch and a hundredth of a millimetre. */
export function fineBoth(mm: number, {units}: Pick<Plan, 'units'>, digits: 3 | 4): Both {
  return bothOf(units, `${number(mm / inchMm, digits)} in`, `${number(mm, 2)} mm`)
}

/** Write a place as computed, idle zeros kept: to a thousandth of an inch and a hundredth of a millimetre. */
export function exactBoth(mm: number, {units}: Pick<Plan, 'units'>): Both {
  return bothOf(units, `${(mm / inchMm).toFixed(3)} in`, `${mm.toFixed(2)} mm`)
}

/** Write a wire's diameter (mm) in inches as packets do, to a thousandth: `.014`. */
export function wireInches(mm: number): string {
  return number(mm / inchMm, 3).replace(/^0/, '')
}

/** Write a gauge that shops have (mm) as a maker would in this build: `.030w`, or `0.76 mm w`. */
export function writeGauge({mm, wound}: {mm: number; wound: boolean}, units: 'in' | 'mm'): string {
  if (units === 'mm') return `${mm.toFixed(2)} mm${wound ? ' w' : ''}`
  return `${(mm / inchMm).toFixed(4).replace(/^0/, '').replace(/0$/, '')}${wound ? 'w' : ''}`
}
