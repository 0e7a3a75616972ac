/** Give the middle value, or the mean of the two in the middle; undefined of nothing. */
export function median(values: readonly number[]): number | undefined {
  const sorted = Float64Array.from(values).sort()
  const upper = sorted[Math.floor(sorted.length / 2)]
  const lower = sorted[Math.floor((sorted.length - 1) / 2)]
  return upper === undefined || lower === undefined ? undefined : (lower + upper) / 2
}
