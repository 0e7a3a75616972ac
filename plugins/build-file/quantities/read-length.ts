import {inch, units as unitTables} from '../../tables/units.ts'
import type {Limits} from '../schema/kinds.ts'
import type {Gauge, Length} from '../schema/values.ts'
import {explainFigure, type Figure, findUnit, likelyUnit, plainText, takeFigure, takeSign} from './figure.ts'
import {type Misreading, misreading, quoted, type Reading, reading, withinLimits} from './reading.ts'
import {writeLength} from './write-length.ts'

const rows = unitTables.length
const inches = findUnit('in', rows)!
const foot = findUnit('ft', rows)!
const unitWord = /^([a-zµ]+|["'])\.?(?: ?)(.*)$/i

/**
 * Read a length: `24`, `3/4`, `1-1/2`, `24 in`, `2' 9 1/2"`, `0.58 m`; a bare number is in `units`.
 * The sign covers the whole. The millimetres are the nearest number there is to the exact product.
 */
export function readLength(text: string, units: 'in' | 'mm'): Reading<Pick<Length, 'mm'>> {
  const {sign, body} = takeSign(plainText(text))
  const first = takeTerm(text, body)
  if ('ok' in first) return first
  const own = first.unit ?? findUnit(units, rows)!
  if (first.rest === '') return millimetres(text, sign, [first.figure, own.times])
  if (first.unit !== foot) return leftOver(text, first.rest)
  const second = takeTerm(text, first.rest.replace(/^- ?/, ''))
  if ('ok' in second) return second
  if (second.unit && second.unit !== inches) return wrong(text, 'only inches can follow feet')
  if (second.rest !== '') return leftOver(text, second.rest)
  return millimetres(text, sign, [first.figure, foot.times], [second.figure, inches.times])
}

/** Take a figure and its unit, if it has one, off the front of a text. */
function takeTerm(text: string, body: string) {
  const taken = takeFigure(body)
  if (!taken) return misreading('unreadable-length', `${quoted(text)} is not a length${explainFigure(body)}`)
  const [, word, rest = ''] = unitWord.exec(taken.rest) ?? []
  if (word === undefined) return {figure: taken.figure, unit: undefined, rest: taken.rest}
  const unit = findUnit(word, rows)
  return unit ? {figure: taken.figure, unit, rest} : unknownUnit(text, word)
}

function unknownUnit(text: string, word: string): Misreading {
  const unit = likelyUnit(word, rows)
  const mended = unit ? [plainText(text).replace(word, unit)] : []
  return wrong(text, `${quoted(word)} is no unit of length`, mended)
}

function leftOver(text: string, rest: string): Misreading {
  const before = plainText(text).slice(0, -rest.length).trim()
  return wrong(text, `${quoted(rest)} is left over`, [
    /^,\d/.test(rest) ? `${before}.${rest.slice(1)}` : before,
  ])
}

/** Say what is wrong, and propose only what can be read. */
const wrong = (text: string, why: string, likely: string[] = []): Misreading =>
  misreading(
    'unreadable-length',
    `${quoted(text)} is not a length: ${why}`,
    likely.filter((spelling) => readLength(spelling, 'mm').ok),
  )

/** Add up the terms over one denominator, so that only the last division rounds. */
function millimetres(
  text: string,
  sign: 1 | -1,
  ...terms: [Figure, readonly [number, number]][]
): Reading<{mm: number}> {
  let [n, d] = [0, 1]
  for (const [figure, times] of terms) {
    const under = figure.d * times[1]
    n = n * under + figure.n * times[0] * d
    d *= under
  }
  const mm = (sign * n) / d
  return Number.isFinite(mm)
    ? reading({mm: mm + 0})
    : misreading('unreadable-length', `${quoted(text)} is too large to be a length`)
}

/**
 * Read a length and see that it lies within its limits (in mm): below zero only where it may lie on either
 * side. Where it is out of range, the same figure in another unit is proposed, if that would do.
 */
export function readLengthWithin(
  text: string,
  units: 'in' | 'mm',
  limits: Limits,
): Reading<Pick<Length, 'mm'>> {
  const length = readLength(text, units)
  if (!length.ok) return length
  const {mm} = length.value
  if (mm < 0 && !limits.signed) {
    return misreading('negative-length', `${quoted(text)} is below zero, which this length cannot be`, [
      plainText(text).replace(/^- ?/, ''),
    ])
  }
  const word = (limit: number, rounding: 'up' | 'down') =>
    units === 'mm'
      ? `${limit} mm`
      : writeLength(limit, {units, rulerMm: inch(Math.abs(limit) < 10 ? 0.001 : 1 / 16)}, rounding)
  const within = withinLimits(mm, text, limits, {word, likely: () => inAnotherUnit(text, units, limits)})
  return within.ok ? length : within
}

function inAnotherUnit(
  text: string,
  units: 'in' | 'mm',
  {min = 0, max = Number.POSITIVE_INFINITY}: Limits,
): string[] {
  const figure = plainText(text).replace(/ ?([a-z]+\.?|["'])$/i, '')
  if (/[a-z"']/i.test(figure) || Number(figure) === 0) return []
  return (units === 'in' ? ['in', 'mm', 'cm'] : ['mm', 'in', 'cm'])
    .map((unit) => `${figure} ${unit}`)
    .filter((spelling) => {
      const tried = readLength(spelling, units)
      return tried.ok && tried.value.mm >= min && tried.value.mm <= max
    })
}

/** The diameters that strings are made in, in millimetres. */
const usual = {min: 0.1, max: 3}

/** Read a string's diameter, with `w` last where it is wound: `.017`, `.032w`, `0.43 mm`, `0.8 mm w`. */
export function readGauge(
  text: string,
  units: 'in' | 'mm',
  limits: Limits,
): Reading<Pick<Gauge, 'mm' | 'wound'>> {
  const plain = plainText(text)
  const [, size = '', wound] = /^(.*?)(?: ?(w))?$/i.exec(plain) ?? []
  const length = readLength(size, units)
  if (!length.ok) {
    const example = units === 'in' ? '.017 or .032w' : '0.43 or 0.8w'
    return misreading(
      'unreadable-gauge',
      `${quoted(text)} is not a gauge, as ${example} is`,
      woundLast(plain),
    )
  }
  const {mm} = length.value
  const {min = usual.min, max = usual.max} = limits
  if (mm >= min && mm <= max) return reading({mm, wound: wound !== undefined})
  const why = `${quoted(text)} is ${mm > max ? 'thicker' : 'thinner'} than any string (${min} to ${max} mm)`
  const likely = otherUnits(size).filter((spelling) => {
    const tried = readLength(spelling, units)
    return tried.ok && tried.value.mm >= min && tried.value.mm <= max
  })
  return misreading(
    'out-of-range',
    why,
    likely.map((spelling) => (wound ? `${spelling} w` : spelling)),
  )
}

/** The figure with each unit in turn, and as thousandths of an inch where it is a whole number. */
function otherUnits(size: string): string[] {
  const figure = size.replace(/ ?[a-z"']+\.?$/i, '')
  const thousandths = /^\d{1,3}$/.test(figure) ? [`.${figure.padStart(3, '0')} in`] : []
  return [`${figure} in`, `${figure} mm`, ...thousandths]
}

/** Move a `w` that stands before the unit to the end. */
function woundLast(plain: string): string[] {
  const [, figure, unit] = /^([\d./ ]+) ?w ?(in|mm)$/i.exec(plain) ?? []
  return figure ? [`${figure.trim()} ${unit} w`] : []
}
