import type {RuleName} from '../../tables/rules.ts'

/** What came of reading one value: the value, or why it cannot be read and what would do. */
export type Reading<T> = {ok: true; value: T} | Misreading

export interface Misreading {
  ok: false
  rule: RuleName
  message: string
  /** Values that would do, as a maker writes them. */
  expected?: string[]
}

/** Say that a value was read. */
export const reading = <T>(value: T): Reading<T> => ({ok: true, value})

/** Say that a value cannot be read; the values that would do are added to the message. */
export function misreading(rule: RuleName, message: string, expected: string[] = []): Misreading {
  if (expected.length === 0) return {ok: false, rule, message}
  const [last, ...others] = [...expected].reverse()
  const choice = others.length > 0 ? `${others.reverse().join(', ')} or ${last}` : last
  return {ok: false, rule, message: `${message}; ${choice} would do`, expected}
}

/** Quote a text of the file in a message, cut short where it is long. */
export const quoted = (text: string): string => `"${text.length > 40 ? `${text.slice(0, 39)}…` : text}"`
