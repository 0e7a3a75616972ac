import {units} from '../../tables/units.ts'
import {findUnit, plainText, takeFigure} from './figure.ts'
import {misreading, quoted, type Reading, reading} from './reading.ts'

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
]

/** Read a day written as in ISO 8601 (`2026-03-07`), and see that the calendar has it. */
export function readDate(text: string): Reading<{iso: string}> {
  const plain = text.trim()
  const match = /^(\d{4})-(\d\d)-(\d\d)$/.exec(plain)
  if (!match)
    return misreading(
      'unreadable-date',
      `${quoted(text)} is not a date: it is written year-month-day, as 2026-03-07`,
      likely(plain),
    )
  const [year, month, day] = match.slice(1).map(Number) as [number, number, number]
  if (month < 1 || month > 12)
    return misreading('unreadable-date', `${quoted(text)} is not a date: there are 12 months`)
  const last = daysIn(year, month)
  if (day >= 1 && day <= last) return reading({iso: plain})
  const why = `${quoted(text)} is not a date: ${months[month - 1]} ${year} has ${last} days`
  return misreading('unreadable-date', why, [`${plain.slice(0, 8)}${day < 1 ? '01' : last}`])
}

/** Days of a month by the Gregorian calendar. */
function daysIn(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28
  return [4, 6, 9, 11].includes(month) ? 30 : 31
}

/** Spell a day whose year stands first in the way that is read. */
function likely(text: string): string[] {
  const [, year, month, day] = /^(\d{4})(?:[-/. ]?)(\d{1,2})(?:[-/. ]?)(\d{1,2})(?:[T ].*)?$/.exec(text) ?? []
  if (year === undefined || month === undefined || day === undefined) return []
  const iso = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`
  return readDate(iso).ok ? [iso] : []
}

/** Read a stretch of time in minutes: `1 h 30 min`, `90 min`, `1.5 h`. */
export function readDuration(text: string): Reading<number> {
  const wrong = (why: string, likely: string[] = []) =>
    misreading('unreadable-duration', `${quoted(text)} is not a length of time${why}`, likely)
  const [, hours, minutes] = /^(\d+) ?[:h] ?(\d\d)$/.exec(plainText(text)) ?? []
  if (hours !== undefined)
    return wrong(': its minutes need their unit', [`${hours} h ${Number(minutes)} min`])
  let rest = plainText(text)
  let total = 0
  let larger = Number.POSITIVE_INFINITY
  while (rest !== '' || larger === Number.POSITIVE_INFINITY) {
    const taken = takeFigure(rest)
    if (!taken) return wrong(', as 1 h 30 min is')
    const [, word = '', after = ''] = /^([a-z]*)\.?(?: ?)(.*)$/i.exec(taken.rest) ?? []
    const unit = findUnit(word, units.duration)
    if (!unit)
      return wrong(
        ': it needs hours (h) or minutes (min)',
        word === '' && after === '' ? [`${taken.written} min`, `${taken.written} h`] : [],
      )
    if (unit.times[0] >= larger) return wrong(': hours come first and minutes after them, each once')
    larger = unit.times[0]
    total += (taken.figure.n * unit.times[0]) / taken.figure.d
    rest = after
  }
  return Number.isFinite(total) ? reading(total) : wrong(': it is too long')
}
