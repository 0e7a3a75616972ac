import type {Plan} from '../../plan/shape/plan.ts'
import {measure} from './measure.ts'
import type {Measure} from './nodes.ts'
import {number} from './number.ts'

type Units = Pick<Plan, 'units'>

const newtonsPerPoundForce = 4.4482216152605
const gramsPerOunce = 28.349523125

/** Write a force (N): `13.9 lbf (62 N)`, or `62 N (13.9 lbf)` in a millimetre build. NIST SP 811, appendix B. */
export function force(n: number, {units}: Units): Measure {
  const pounds = `${number(n / newtonsPerPoundForce, 1)} lbf`
  const newtons = `${number(n, 0)} N`
  return units === 'in' ? measure(pounds, newtons) : measure(newtons, pounds)
}

/** Write a force (N) in the build's units alone, as plain text: `13.9 lbf`, or `62 N`. */
export function forceAlone(n: number, {units}: Units): string {
  return units === 'in' ? `${number(n / newtonsPerPoundForce, 1)} lbf` : `${number(n, 0)} N`
}

/** Write a mass (kg): `1 lb 4 oz (567 g)`, or `567 g (1 lb 4 oz)` in a millimetre build. NIST SP 811, appendix B. */
export function mass(kg: number, {units}: Units): Measure {
  const ounces = Math.round((kg * 1000) / gramsPerOunce)
  const pounds = ounces < 16 ? `${ounces} oz` : `${Math.floor(ounces / 16)} lb ${ounces % 16} oz`
  const grams = `${number(kg * 1000, 0)} g`
  return units === 'in' ? measure(pounds, grams) : measure(grams, pounds)
}

/** Write an area (mm²): `1.5 sq in (968 mm²)`, or `968 mm² (1.5 sq in)` in a millimetre build. */
export function area(mm2: number, {units}: Units): Measure {
  const squareInches = `${number(mm2 / 25.4 ** 2, 2)} sq in`
  const squareMm = `${number(mm2, 0)} mm²`
  return units === 'in' ? measure(squareInches, squareMm) : measure(squareMm, squareInches)
}

/** Write a string's mass per length (kg/m) in g/m, the unit that packets and tables use: `1.38 g/m`. */
export function massPerLength(kgM: number): string {
  return `${number(kgM * 1000, 2)} g/m`
}

/** Write a difference of pitch with its sign: `+3 cents` is sharp, `−2 cents` flat, `0 cents` neither. */
export function cents(value: number, digits = 0): string {
  const written = number(Math.abs(value), digits)
  const sign = Number(written) === 0 ? '' : value < 0 ? '−' : '+'
  return `${sign}${written} ${written === '1' ? 'cent' : 'cents'}`
}

/** Write an angle (degrees) to half a degree: `13°`, `13.5°`. */
export function angle(deg: number): string {
  return `${number(Math.round(deg * 2) / 2, 1)}°`
}

/** Write a part of a whole (0 to 1) in per cent: `12 %`. */
export function percent(fraction: number): string {
  return `${number(fraction * 100, 0)} %`
}
