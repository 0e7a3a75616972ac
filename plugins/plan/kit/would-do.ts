/** A value of the build file that would do, in mm (or as its path has it). */
export interface WouldDo {
  path: string
  mm: number
}

const slack = 1e-6

/** Go to the next mark of the ruler on one side (mm); a length that stands on a mark stays. Never less than nothing (-0). */
export function toMark(mm: number, rulerMm: number, side: 'down' | 'up'): number {
  const marks = mm / rulerMm
  const near = Math.round(marks)
  const mark = Math.abs(marks - near) < slack ? near : side === 'down' ? Math.floor(marks) : Math.ceil(marks)
  return mark * rulerMm + 0
}

/**
 * Find the least whole number in a range that does, where whatever is larger does as well; undefined where none does.
 * From a guess it steps, twice as far each time, until the answer lies between two that were tried; then it halves.
 */
export function leastMark(
  [least, most]: readonly [least: number, most: number],
  does: (mark: number) => boolean,
  guess?: number,
): number | undefined {
  let [short, enough] = [least - 1, most + 1]
  let at = guess === undefined ? most : Math.max(least, Math.min(most, guess))
  for (let step = 1; at > short && at < enough; step *= 2) {
    if (does(at)) enough = at
    else short = at
    if (guess === undefined) break
    at = at === enough ? Math.max(least, at - step) : Math.min(most, at + step)
  }
  while (enough - short > 1 && short < most) {
    const middle = Math.floor((short + enough) / 2)
    if (does(middle)) enough = middle
    else short = middle
  }
  return enough > most ? undefined : enough
}
