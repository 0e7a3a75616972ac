/** A line where the strings bow the neck further than they stand above it, in mm. */
export interface LineTooLow {
  line: number
  bowMm: number
  actionMm: number
}

/** Find the line, counted from 0, where the bow exceeds the lowest string's height by most; undefined where none does. */
export function lineTooLow(
  bowMm: readonly number[] = [],
  heightsMm: readonly (readonly number[])[] = [],
): LineTooLow | undefined {
  const over = bowMm.map((bow, line) => ({
    line,
    bowMm: bow,
    actionMm: Math.min(...heightsMm.map((heights) => heights[line] ?? Number.POSITIVE_INFINITY)),
  }))
  return over
    .filter((one) => one.bowMm > one.actionMm)
    .reduce<LineTooLow | undefined>(
      (worst, one) => (worst && worst.bowMm - worst.actionMm >= one.bowMm - one.actionMm ? worst : one),
      undefined,
    )
}
