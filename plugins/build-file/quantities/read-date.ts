import {units} from '../../tables/units.ts'
import {nearest} from '../schema/nearest.ts'
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
      likelyDays(plain),
    )
  const [year, month, day] = match.slice(1).map(Number) as [number, number, number]
  if (month < 1 || month > 12)
    return misreading(
      'unreadable-date',
      `${quoted(text)} is not a date: there are 12 months`,
      likelyDays(plain),
    )
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

/** Spell a day in the way that is read, in both ways where its month and day may be either. */
export function likelyDays(text: string): string[] {
  const plain = text.trim().replace(/[,.]$/, '')
  const [, y, a = '', b = ''] =
    /^(\d{4})(?:[-/. ]?)(\d{1,2})(?:[-/. ]?)(\d{1,2})(?:[T ]\d.*)?$/.exec(plain) ?? []
  if (y !== undefined) return days(y, [a, b], isoOf(y, a, b) ? [] : [b, a])
  const [, first = '', second = '', year] =
    /^(\d{1,2}) ?[-/. ] ?(\d{1,2}) ?[-/. ] ?(\d{4}|\d\d)$/.exec(plain) ?? []
  // Points part day, month and year; a stroke stands between them in either order.
  if (year !== undefined)
    return plain.includes('.')
      ? days(year, [second, first], [first, second])
      : days(year, [first, second], [second, first])
  const word = /\p{L}{3,}/u.exec(
    plain.replace(/\b(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?\b,?/i, ''),
  )?.[0]
  const month = word ? monthOf(word) : 0
  const numbers = plain.match(/\d+/g) ?? []
  const long = numbers.find((each) => each.length === 4) ?? (numbers.length === 2 ? numbers[1] : undefined)
  const day = numbers.find((each) => each !== long && each.length <= 2)
  return month > 0 && long && day && numbers.length === 2 ? days(long, [String(month), day], []) : []
}

/** The month that a word begins or misspells, from 1; 0 for none. */
function monthOf(word: string): number {
  const said = word.toLowerCase()
  const begun = months.findIndex((name) =>
    name.toLowerCase().startsWith(said.slice(0, Math.max(3, said.length))),
  )
  const near = nearest(said, months)
  return begun >= 0 ? begun + 1 : near ? months.indexOf(near) + 1 : 0
}

/** The days that a year and each of some pairs of month and day make, once each. */
const days = (year: string, ...pairs: (readonly string[])[]): string[] => [
  ...new Set(pairs.flatMap(([month = '', day = '']) => isoOf(year, month, day) ?? [])),
]

function isoOf(year: string, month: string, day: string): string | undefined {
  const long = year.length === 2 ? `20${year}` : year
  const [m, d] = [Number(month), Number(day)]
  if (m < 1 || m > 12 || d < 1 || d > daysIn(Number(long), m)) return undefined
  return `${long}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`
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

const dayShape =
  /^(?:\d{1,4} ?[-/.] ?\d{1,2} ?[-/.] ?\d{1,4}|(?:[A-Z][a-z]{2,8},? )?(?:[A-Z][a-z]{2,8}\.? \d{1,2}(?:st|nd|rd|th)?,? \d{4}|\d{1,2}(?:st|nd|rd|th|\.)? [A-Z][a-z]{2,8}\.?,? \d{4}))(?![\w/-])/

/** Find a day in another form at the start of a text, or one that no calendar has, with what would do. */
export function dayInAnotherForm(text: string): {written: string; expected: string[]} | undefined {
  const written = dayShape.exec(text)?.[0]
  if (written === undefined || readDate(written).ok) return undefined
  const found = readDate(written)
  const expected = likelyDays(written.replace(/(?<=\d)(?:st|nd|rd|th)\b/, ''))
  if (expected.length > 0) return {written, expected}
  return /^\d{4}-\d\d-\d\d$/.test(written) && !found.ok
    ? {written, expected: found.expected ?? []}
    : undefined
}

/** Spell hours in the way that is read, where a text looks like hours in another form: `1h30`, `1:30`, `1,5 h`, `90`. */
export function likelyHours(text: string): string[] {
  const plain = plainText(text).replace(/(\d),(\d)/, '$1.$2')
  const isHours = /^\d[\d.: /]*(?:h|hrs?|hours?|std\.?|m|mins?|minutes)?[ \d.:]*(?:m|mins?|minutes)?\.?$/i
  if (!isHours.test(plain)) return []
  const spelt = plain
    .replace(/\bstd\.?/i, 'h')
    .replace(/(\d) ?m\.?$/i, '$1 min')
    .replace(/^(\d+) ?(?:h|hrs?|hours?) ?(\d{1,2})$/i, '$1 h $2 min')
  for (const each of [plain, spelt]) {
    const found = readDuration(each)
    if (found.ok) return [each.replace(/(\d)(?=h|min)/i, '$1 ')]
    if (found.expected) return found.expected
  }
  return []
}
