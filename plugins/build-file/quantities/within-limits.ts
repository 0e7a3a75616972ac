import type {Limits} from '../kinds.ts'
import {misreading, quoted, type Reading, reading} from './reading.ts'

/** How a number of the kind's own unit is worded in a message. */
export type Word = (value: number, rounding: 'up' | 'down') => string

/** See that a number that was read lies within its limits; `likely` lists other values that may be meant. */
export function withinLimits(
  value: number,
  text: string,
  limits: Limits,
  word: Word,
  likely: () => string[] = () => [],
): Reading<number> {
  const {min, max, whole} = limits
  if (whole && !Number.isInteger(value)) {
    return misreading('out-of-range', `${quoted(text)} is not a whole number`)
  }
  if (min !== undefined && value < min) {
    return misreading(
      'out-of-range',
      `${quoted(text)} is less than this can be, which is ${word(min, 'up')} at least`,
      likely(),
    )
  }
  if (max !== undefined && value > max) {
    return misreading(
      'out-of-range',
      `${quoted(text)} is more than this can be, which is ${word(max, 'down')} at most`,
      likely(),
    )
  }
  return reading(value)
}
