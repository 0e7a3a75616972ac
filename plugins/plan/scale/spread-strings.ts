/**
 * Spread strings evenly over a spacing (mm, first to last, centre to centre) about the centre line: their centres,
 * or with `diametersMm` the gaps between them. Returns mm off the centre line, the first string's below zero.
 * A course counts as one string at its middle.
 */
export function spreadStrings(count: number, spacingMm: number, diametersMm?: readonly number[]): number[] {
  if (count < 2) return Array(count).fill(0)
  if (!diametersMm) return Array.from({length: count}, (_, i) => spacingMm * (i / (count - 1) - 0.5))
  const pairs = diametersMm.slice(1).map((diameter, i) => (diametersMm[i]! + diameter) / 2)
  const gapMm = (spacingMm - pairs.reduce((sum, pair) => sum + pair, 0)) / (count - 1)
  let offMm = -spacingMm / 2
  const inner = pairs.slice(0, -1).map((pair) => (offMm += gapMm + pair))
  return [-spacingMm / 2, ...inner, spacingMm / 2]
}
