/** A value of the build file that would do, in mm (or as its path has it). */
export interface WouldDo {
  path: string
  mm: number
}

const slack = 1e-6

/** Go to the next mark of the ruler on one side (mm); a length that stands on a mark stays. */
export function toMark(mm: number, rulerMm: number, side: 'down' | 'up'): number {
  const marks = mm / rulerMm
  const near = Math.round(marks)
  if (Math.abs(marks - near) < slack) return near * rulerMm
  return (side === 'down' ? Math.floor(marks) : Math.ceil(marks)) * rulerMm
}

/** Halve down to the least whole number in a range that does, where whatever is larger does as well; undefined where none does. */
export function leastMark(
  [least, most]: readonly [least: number, most: number],
  does: (mark: number) => boolean,
): number | undefined {
  if (most < least || !does(most)) return undefined
  let [short, enough] = [least - 1, most]
  while (enough - short > 1) {
    const middle = Math.floor((short + enough) / 2)
    if (does(middle)) enough = middle
    else short = middle
  }
  return enough
}
