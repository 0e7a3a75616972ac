import {number} from '../kit.ts'

/** Write a time (h) as it is waited: `30 min`, `6 h`, `1 day`, `4 days 4 h`. */
export function hoursInWords(hours: number): string {
  if (hours < 1) return `${number(hours * 60, 0)} min`
  const days = Math.floor(hours / 24)
  const rest = hours - days * 24
  const inDays = days === 0 ? '' : days === 1 ? '1 day' : `${days} days`
  return [inDays, rest > 0 ? `${number(rest, 1)} h` : ''].filter(Boolean).join(' ')
}
