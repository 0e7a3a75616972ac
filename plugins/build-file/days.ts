import type {DayEntry} from './build.ts'
import type {Place} from './place.ts'
import {readDate} from './quantities/read-date.ts'
import {readDuration} from './quantities/read-duration.ts'

/**
 * Read a heading as a day's entry: it starts with a date (ISO 8601), and round brackets at its end that hold a
 * duration and nothing else are the hours. `2026-03-07 Milling the strips (1 h 30 min)` → the seventh of March,
 * `Milling the strips`, 90 minutes. Undefined where it starts with no date that the calendar has.
 */
export function readDay(heading: string, place: Place): DayEntry | undefined {
  const [, iso = '', rest = ''] = /^(\d{4}-\d\d-\d\d)(?![\w-])(.*)$/s.exec(heading.trim()) ?? []
  if (!readDate(iso).ok) return undefined
  const [, before = '', inBrackets = ''] = /^(.*)\(([^()]*)\)\s*$/s.exec(rest) ?? []
  const minutes = readDuration(inBrackets)
  const title = (minutes.ok ? before : rest).replace(/^[\s:,.;–—-]+/, '').trim()
  return {iso, title, ...(minutes.ok ? {minutes: minutes.value} : {}), place}
}
