/** Give the root of the mean of the squares; 0 of nothing. */
export function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, one) => sum + one * one, 0) / Math.max(1, values.length))
}
