import {units as unitTables} from '../../tables/units.ts'
import type {Length} from '../values.ts'
import {explainFigure} from './explain-figure.ts'
import {findUnit} from './find-unit.ts'
import {likelyUnit} from './likely-unit.ts'
import {plainText} from './plain-text.ts'
import {type Misreading, misreading, quoted, type Reading, reading} from './reading.ts'
import {type Figure, takeFigure} from './take-figure.ts'
import {takeSign} from './take-sign.ts'

const rows = unitTables.length
const inch = findUnit('in', rows)!
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
  if (second.unit && second.unit !== inch) return wrong(text, 'only inches can follow feet')
  if (second.rest !== '') return leftOver(text, second.rest)
  return millimetres(text, sign, [first.figure, foot.times], [second.figure, inch.times])
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
