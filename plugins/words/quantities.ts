import type {Plan} from '../plan/plan.ts'
import {inchMm, ounceKg, poundForceN} from '../tables/units.ts'

export type Units = Pick<Plan, 'units'>

/** A quantity in the build's own unit, and in the other one. */
export type Both = readonly [own: string, other: string]

/** Put what is written in both units in the build's order. */
export function bothOf(units: Plan['units'], inches: string, metric: string): Both {
  return units === 'in' ? [inches, metric] : [metric, inches]
}

/**
 * Write a number with at most so many digits after the point, without idle zeros, and with a true minus sign.
 * `number(-0.04, 1)` is `0`.
 */
export function number(value: number, digits: number): string {
  const written = String(Number(value.toFixed(digits)))
  return written === '-0' ? '0' : written.replace('-', '−')
}

/** Write a force (N) in both units: `13.9 lbf` and `62 N`. NIST SP 811, appendix B. */
export function forceBoth(n: number, {units}: Units): Both {
  return bothOf(units, `${number(n / poundForceN, 1)} lbf`, `${number(n, 0)} N`)
}

/** Write a force (N) in the build's units alone: `13.9 lbf`, or `62 N`. */
export function forceWords(n: number, units: Units): string {
  return forceBoth(n, units)[0]
}

/** Write a mass (kg) in both units: `1 lb 4 oz` and `567 g`. NIST SP 811, appendix B. */
export function massBoth(kg: number, {units}: Units): Both {
  const ounces = Math.round(kg / ounceKg)
  const pounds = ounces < 16 ? `${ounces} oz` : `${Math.floor(ounces / 16)} lb ${ounces % 16} oz`
  return bothOf(units, pounds, `${number(kg * 1000, 0)} g`)
}

/** Write an area (mm²) in both units: `1.5 sq in` and `968 mm²`. */
export function areaBoth(mm2: number, {units}: Units): Both {
  return bothOf(units, `${number(mm2 / inchMm ** 2, 2)} sq in`, `${number(mm2, 0)} mm²`)
}

/** Write a string's mass per length (kg/m) in g/m, the unit that packets and tables use: `1.38`. */
export function gramsPerMetre(kgM: number): string {
  return number(kgM * 1000, 2)
}

/** Write the same with its unit: `1.38 g/m`. */
export function massPerLength(kgM: number): string {
  return `${gramsPerMetre(kgM)} g/m`
}

/** Write a difference of pitch with its sign: `+3 cents` is sharp, `−2 cents` flat, `0 cents` neither. */
export function cents(value: number, digits = 0): string {
  const written = number(Math.abs(value), digits)
  const sign = Number(written) === 0 ? '' : value < 0 ? '−' : '+'
  return `${sign}${written} ${written === '1' ? 'cent' : 'cents'}`
}

/** Write how far off a pitch is, sharp or flat: `2.3 cents`, `1 cent`. */
export function centsOff(value: number, digits = 1): string {
  const written = number(Math.abs(value), digits)
  return `${written} ${written === '1' ? 'cent' : 'cents'}`
}

/** Write an angle (degrees) to half a degree: `13°`, `13.5°`. */
export function angle(deg: number): string {
  return `${number(Math.round(deg * 2) / 2, 1)}°`
}

/** Write a part of a whole (0 to 1) in per cent: `12 %`. */
export function percent(fraction: number): string {
  return `${number(fraction * 100, 0)} %`
}

/** Write a time (h) as it is waited: `30 min`, `6 h`, `1 day`, `4 days 4 h`. */
export function hoursInWords(hours: number): string {
  if (hours < 1) return `${number(hours * 60, 0)} min`
  const days = Math.floor(hours / 24)
  const rest = hours - days * 24
  const inDays = days === 0 ? '' : days === 1 ? '1 day' : `${days} days`
  return [inDays, rest > 0 ? `${number(rest, 1)} h` : ''].filter(Boolean).join(' ')
}

/** Say a few things in a row as a sentence does: `D3, A3 and D4`. */
export function inWords(things: readonly string[]): string {
  return things.length < 2 ? things.join('') : `${things.slice(0, -1).join(', ')} and ${things.at(-1)}`
}

/** Say where a pitch lies on a string: `the open D3`, `line 5 of A3`. */
export function stringAtLine({string, label}: {string: string; label: string}): string {
  return label === '0' ? `the open ${string}` : `line ${label} of ${string}`
}
