import type {RuleName} from '../../tables/rules.ts'
import {explainFigure} from './explain-figure.ts'
import {plainText} from './plain-text.ts'
import {misreading, quoted, type Reading, reading} from './reading.ts'
import {takeFigure} from './take-figure.ts'
import {takeSign} from './take-sign.ts'

/** Read a number that has no unit: `440`, `1.5`, `2 1/2`. */
export function readNumber(
  text: string,
  rule: RuleName = 'unreadable-number',
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
