import {usualCores} from '../tables/string-wraps.ts'

/** Say how thick the core of a wound string of this gauge usually is; both in mm. Between the table's rows in a straight line. */
export function usualCoreMm(gaugeMm: number): number {
  const gaugeIn = gaugeMm / 25.4
  const upper = usualCores.findIndex((row) => gaugeIn <= row.gaugeIn)
  const [a, b] = upper > 0 ? [usualCores[upper - 1]!, usualCores[upper]!] : []
  if (!a || !b) return gaugeMm * usualCores.at(upper)!.coreFraction
  const part = (gaugeIn - a.gaugeIn) / (b.gaugeIn - a.gaugeIn)
  return gaugeMm * (a.coreFraction + part * (b.coreFraction - a.coreFraction))
}
