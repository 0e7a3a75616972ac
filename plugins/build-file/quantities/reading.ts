import type {ReaderRule} from '../rules/rules.ts'
import type {Limits} from '../schema/kinds.ts'

/** What came of reading one value: the value, or why it cannot be read and what would do. */
export type Reading<T> = {ok: true; value: T} | Misreading

export interface Misreading {
  ok: false
  rule: ReaderRule
  message: string
  /** Values that would do, as a maker writes them. */
  expected?: string[]
}

/** Say that a value was read. */
export const reading = <T>(value: T): Reading<T> => ({ok: true, value})

/** Say that a value cannot be read; the values that would do are added to the message. */
export function misreading(rule: ReaderRule, message: string, expected: string[] = []): Misreading {
  return {ok: false, rule, message: message + whatWouldDo(expected), ...(expected.length > 0 && {expected})}
}

/** Give the message of a misreading without what would do. */
export const whyOf = ({message, expected = []}: Misreading): string =>
  message.slice(0, message.length - whatWouldDo(expected).length)

/** Word values that would do, as the end of a sentence: `; D2, D3 or D4 would do`. */
export function whatWouldDo(expected: readonly string[]): string {
  const last = expected.at(-1)
  if (last === undefined) return ''
  const others = expected.slice(0, -1).join(', ')
  return `; ${others ? `${others} or ${last}` : last} would do`
}

/** Quote a text of the file in a message, cut short where it is long. */
export const quoted = (text: string): string => `"${text.length > 40 ? `${text.slice(0, 39)}…` : text}"`

/** How a number of the kind's own unit is worded in a message. */
type Word = (value: number, rounding: 'up' | 'down') => string

/** See that a number that was read lies within its limits; `likely` lists other values that may be meant. */
export function withinLimits(
  value: number,
  text: string,
  {min, max, whole}: Limits,
  {word, likely = () => []}: {word: Word; likely?: () => string[]},
): Reading<number> {
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

/** Give what was read the name of its unit: 13 becomes `{deg: 13}`. */
export const named = <K extends string, T>(key: K, found: Reading<T>): Reading<Record<K, T>> =>
  found.ok ? reading({[key]: found.value} as Record<K, T>) : found

/** Make a reader of numbers keep to the limits of a leaf; `unit` follows a number in messages. */
export const limited =
  <K extends string>(key: K, unit: string, read: (text: string) => Reading<number>) =>
  (text: string, {limits}: {limits: Limits}): Reading<Record<K, number>> => {
    const found = read(text)
    return named(
      key,
      found.ok ? withinLimits(found.value, text, limits, {word: (limit) => `${limit}${unit}`}) : found,
    )
  }
