import {plainText} from './plain-text.ts'
import {misreading, quoted, type Reading, reading} from './reading.ts'
import {takeFigure} from './take-figure.ts'

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
