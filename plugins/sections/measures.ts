import type {Rounding} from '../build-file/quantities/write-length.ts'
import {lengthBoth, lengthWords, type Ruler} from '../words/lengths.ts'
import {writeMeasured} from '../words/measured.ts'
import {areaBoth, forceBoth, massBoth, type Units} from '../words/quantities.ts'
import {behind, type Handed, toSide} from '../words/sides.ts'
import {type Inline, inline, text} from './kit.ts'
import type {Fraction, Measure} from './kit-nodes.ts'

const parts = /\d+\/\d+/

/**
 * Set every `1/2` of a text as a proper fraction (class `frac`: the typeface's own, which would else take every
 * figure near a slash), which copies and reads aloud as plain text. Nothing else is changed.
 */
export function fractions(written: string): Inline[] {
  const found = parts.exec(written)
  if (!found) return written ? [text(written)] : []
  const [whole] = found
  const before = written.slice(0, found.index)
  return [
    ...(before ? [text(before)] : []),
    fraction(whole),
    ...fractions(written.slice(found.index + whole.length)),
  ]
}

const fraction = (written: string): Fraction => ({
  type: 'fraction',
  data: {hName: 'span', hProperties: {className: ['frac']}},
  children: [text(written)],
})

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

/** Write a length (mm) in the build's units to its ruler, then the other in smaller type: `11 1/2 in (292.1 mm)`. */
export function length(mm: number, ruler: Ruler, rounding?: Rounding): Measure {
  return measure(...lengthBoth(mm, ruler, rounding))
}

/** Write a length in the build's units alone, for crowded tables and inside sentences. */
export function lengthAlone(mm: number, ruler: Ruler, rounding?: Rounding): Measure {
  return measure(lengthWords(mm, ruler, rounding))
}

/** Write how far off the centre line a place lies, and to which side: `7/16 in to the bass side`. */
export function offCentre(offMm: number, plan: Ruler & Handed): Inline[] {
  return offMm === 0 ? [toSide(0, plan)] : [lengthAlone(Math.abs(offMm), plan), ` ${toSide(offMm, plan)}`]
}

/** Write a place along the neck, `both` in both units: `28 3/8 in`, and of the head `4 in behind`. */
export function fromNut(mm: number, ruler: Ruler, both = false): Inline[] {
  const written = (both ? length : lengthAlone)(Math.abs(mm), ruler)
  return mm < 0 ? [written, ` ${behind}`] : [written]
}

/** Write a force (N): `13.9 lbf (62 N)`, or `62 N (13.9 lbf)` in a millimetre build. */
export function force(n: number, units: Units): Measure {
  return measure(...forceBoth(n, units))
}

/** Write a mass (kg): `1 lb 4 oz (567 g)`, or `567 g (1 lb 4 oz)` in a millimetre build. */
export function mass(kg: number, units: Units): Measure {
  return measure(...massBoth(kg, units))
}

/** Write an area (mm²): `1.5 sq in (968 mm²)`, or `968 mm² (1.5 sq in)` in a millimetre build. */
export function area(mm2: number, units: Units): Measure {
  return measure(...areaBoth(mm2, units))
}

/** Write what was measured, or a difference of it, for the page: as `writeMeasured`, with the true minus sign. */
export function measured(...[value, unit, by]: Parameters<typeof writeMeasured>): Measure {
  return measure(writeMeasured(value, unit, by).replace('-', '−'))
}

/** Write a bit's name with its fractions set as such, each figure kept beside its unit. */
export function bitWords(name: string): Inline[] {
  return fractions(name.replace(/(\d) (in|mm)\b/g, '$1\u00a0$2'))
}
