import type {RuleName} from '../../tables/rules.ts'
import type {UnitRow} from '../../tables/units.ts'
import {explainFigure} from './explain-figure.ts'
import {findUnit} from './find-unit.ts'
import {likelyUnit} from './likely-unit.ts'
import {plainText} from './plain-text.ts'
import {misreading, quoted, type Reading, reading} from './reading.ts'
import {takeFigure} from './take-figure.ts'
import {takeSign} from './take-sign.ts'

export interface MeasureKind {
  /** With its article: `a force`. */
  what: string
  rule: RuleName
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
