import {centsOf, type UnitRow} from '../../tables/units.ts'
import type {ReaderRule} from '../rules/rules.ts'
import {explainFigure, findUnit, likelyUnit, plainText, takeFigure, takeSign} from './figure.ts'
import {misreading, quoted, type Reading, reading} from './reading.ts'

/** Read a number that has no unit: `440`, `1.5`, `2 1/2`. */
export function readNumber(
  text: string,
  rule: ReaderRule = 'unreadable-number',
  what = 'a number',
): Reading<number> {
  const {sign, body} = takeSign(plainText(text))
  const taken = takeFigure(body)
  if (!taken) return misreading(rule, `${quoted(text)} is not ${what}${explainFigure(body)}`)
  const {figure, written, rest} = taken
  if (rest === '') return reading((sign * figure.n) / figure.d + 0)
  return misreading(rule, `${quoted(text)} is not ${what}: ${quoted(rest)} is left over`, [
    sign < 0 ? `-${written}` : written,
  ])
}

export interface MeasureKind {
  /** With its article: `a force`. */
  what: string
  rule: ReaderRule
  rows: readonly UnitRow[]
  /** What a bare number means; left out, a unit must be given. */
  bare?: UnitRow
}

/** Read one figure with one unit (`60 N`, `5.8 g/m`, `13°`) as a number of the kind's own unit. */
export function readMeasure(text: string, {what, rule, rows, bare}: MeasureKind): Reading<number> {
  const {sign, body} = takeSign(plainText(text))
  const taken = takeFigure(body)
  if (!taken) return misreading(rule, `${quoted(text)} is not ${what}${explainFigure(body)}`)
  const written = `${sign < 0 ? '-' : ''}${taken.written}`
  const main = rows.map((row) => row.words[0]!)
  if (taken.rest === '' && !bare) {
    return misreading(
      rule,
      `${quoted(text)} has no unit`,
      main.map((word) => `${written} ${word}`),
    )
  }
  const unit = taken.rest === '' ? bare : findUnit(taken.rest, rows)
  if (!unit) {
    const close = likelyUnit(taken.rest, rows)
    const likely = close ? [close] : main
    const why = `${quoted(text)} is not ${what}: ${quoted(taken.rest)} is not one of its units`
    return misreading(
      rule,
      why,
      likely.map((word) => (word === '°' ? `${written}°` : `${written} ${word}`)),
    )
  }
  const value = (sign * taken.figure.n * unit.times[0]) / (taken.figure.d * unit.times[1])
  return Number.isFinite(value)
    ? reading(value + 0)
    : misreading(rule, `${quoted(text)} is too large to be ${what}`)
}

/** Read an amount of the journal's currency: a number without its sign or letters. */
export function readMoney(text: string): Reading<number> {
  const bare = plainText(text)
    .replace(/^([$€£¥]|[A-Za-z]{3} ?)|( ?[A-Za-z]{3}|[$€£¥])$/g, '')
    .trim()
  const amount = readNumber(bare, 'unreadable-money', 'an amount of money')
  if (!amount.ok || bare === plainText(text)) return amount
  return misreading(
    'unreadable-money',
    `${quoted(text)} names a currency, which the journal does for every cost`,
    [bare],
  )
}

const ratio = /^(\d+(?:\.\d+)?) ?[/:] ?(\d+(?:\.\d+)?)$/

/** Read a step of a temperament in cents above the open string: a number of cents, or a ratio with / or :. */
export function readStep(text: string): Reading<number> {
  const match = ratio.exec(plainText(text))
  if (!match)
    return readNumber(text, 'unreadable-step', 'a step: that is a number of cents or a ratio, as 702 or 3/2')
  const cents = centsOf(Number(match[1]) / Number(match[2]))
  if (Number.isFinite(cents)) return reading(cents)
  return misreading('unreadable-step', `${quoted(text)} is not a ratio: neither of its numbers can be 0`)
}

/** Read true or false; yes and no are understood. */
export function readFlag(text: string): Reading<boolean> {
  const word = text.trim().toLowerCase()
  if (word === 'true' || word === 'yes') return reading(true)
  if (word === 'false' || word === 'no') return reading(false)
  return misreading('unreadable-flag', `${quoted(text)} is neither yes nor no`, ['true', 'false'])
}

/** Read the name that players give a line, a whole number or a half after one: 6.5 and `6½` are `6 1/2`. */
export function readLineLabel(text: string): Reading<string> {
  const taken = takeFigure(plainText(text))
  const halves = taken && taken.rest === '' ? (2 * taken.figure.n) / taken.figure.d : Number.NaN
  if (!Number.isInteger(halves)) {
    return misreading(
      'unreadable-line-label',
      `${quoted(text)} names no line: lines are whole numbers, or halves as 6 1/2`,
    )
  }
  const whole = Math.floor(halves / 2)
  if (halves % 2 === 0) return reading(`${whole}`)
  return reading(whole === 0 ? '1/2' : `${whole} 1/2`)
}
