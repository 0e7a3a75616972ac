/**
 * Write a number with at most so many digits after the point, without idle zeros, and with a true minus sign.
 * `number(-0.04, 1)` is `0`.
 */
export function number(value: number, digits: number): string {
  const written = String(Number(value.toFixed(digits)))
  return written === '-0' ? '0' : written.replace('-', '−')
}

/** Say a few things in a row as a sentence does: `D3, A3 and D4`. */
export function inWords(things: readonly string[]): string {
  return things.length < 2 ? things.join('') : `${things.slice(0, -1).join(', ')} and ${things.at(-1)}`
}

/** Write a time (h) as it is waited: `30 min`, `6 h`, `1 day`, `4 days 4 h`. */
export function hoursInWords(hours: number): string {
  if (hours < 1) return `${number(hours * 60, 0)} min`
  const days = Math.floor(hours / 24)
  const rest = hours - days * 24
  const inDays = days === 0 ? '' : days === 1 ? '1 day' : `${days} days`
  return [inDays, rest > 0 ? `${number(rest, 1)} h` : ''].filter(Boolean).join(' ')
}
