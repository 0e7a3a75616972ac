import type {Limits} from '../kinds.ts'
import {type Reading, reading} from './reading.ts'
import {withinLimits} from './within-limits.ts'

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
      found.ok ? withinLimits(found.value, text, limits, (limit) => `${limit}${unit}`) : found,
    )
  }
