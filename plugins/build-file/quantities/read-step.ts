import {plainText} from './plain-text.ts'
import {readNumber} from './read-number.ts'
import {misreading, quoted, type Reading, reading} from './reading.ts'

const ratio = /^(\d+(?:\.\d+)?) ?[/:] ?(\d+(?:\.\d+)?)$/

/** Read a step of a temperament in cents above the open string: a number of cents, or a ratio with / or :. */
export function readStep(text: string): Reading<number> {
  const match = ratio.exec(plainText(text))
  if (!match)
    return readNumber(text, 'unreadable-step', 'a step: that is a number of cents or a ratio, as 702 or 3/2')
  const cents = 1200 * Math.log2(Number(match[1]) / Number(match[2]))
  if (Number.isFinite(cents)) return reading(cents)
  return misreading('unreadable-step', `${quoted(text)} is not a ratio: neither of its numbers can be 0`)
}
