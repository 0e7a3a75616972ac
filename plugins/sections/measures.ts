import {writeLength} from '../build-file/quantities/write-length.ts'
import {writeMeasured} from '../build-file/quantities/write-measured.ts'
import type {Plan} from '../plan/shape/plan.ts'
import {number} from '../words/numbers.ts'
import {type Inline, inline, text} from './kit.ts'
import type {Fraction, Measure} from './kit-nodes.ts'

const parts = /(\d+)\/(\d+)/

/**
 * Set every `1/2` of a text as a proper fraction (class `fraction`: two spans round a slash), which copies and
 * reads aloud as plain text. Nothing else is changed.
 */
export function fractions(written: string): Inline[] {
  const found = parts.exec(written)
  if (!found) return written ? [text(written)] : []
  const [whole, over, under] = found as unknown as [string, string, string]
  const before = written.slice(0, found.index)
  return [
    ...(before ? [text(before)] : []),
    fraction(over, under),
    ...fractions(written.slice(found.index + whole.length)),
  ]
}

function fraction(over: string, under: string): Fraction {
  return {
    type: 'fraction',
    data: {
      hName: 'span',
      hProperties: {className: ['fraction']},
      hChildren: [span(over), {type: 'text', value: '/'}, span(under)],
    },
    children: [text(over + '/' + under)],
  }
}

function span(value: string) {
  return {
    type: 'element' as const,
    tagName: 'span',
    properties: {},
    children: [{type: 'text' as const, value}],
  }
}

/**
 * Write a quantity in the build's own unit, and in the other one, smaller, in brackets: `11 1/2 in (292.1 mm)`.
 * Both texts carry their units.
 */
export function measure(first: string, second?: string): Measure {
  return {
    type: 'measure',
    data: {hName: 'span', hProperties: {className: ['measure']}},
    children: [
      ...inline(fractions(first)),
      ...(second === undefined
        ? []
        : [
            text(' '),
            {type: 'small' as const, data: {hName: 'small'}, children: inline(fractions(`(${second})`))},
          ]),
    ],
  }
}

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

/** Write what was measured, or a difference of it, for the page: as `writeMeasured`, with the true minus sign. */
export function measured(...[value, unit, by]: Parameters<typeof writeMeasured>): Measure {
  return measure(writeMeasured(value, unit, by).replace('-', '−'))
}

/** Write a bit's name with its fractions set as such, each figure kept beside its unit. */
export function bitWords(name: string): Inline[] {
  return fractions(name.replace(/(\d) (in|mm)\b/g, '$1\u00a0$2'))
}
