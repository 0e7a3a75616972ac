import {type BitSeries, bitOf} from './bits.ts'

const inchMm = 25.4
/** From here on a bit with a rim cuts cleaner than one with a point (mm); common practice, no source. */
const forstnerFromMm = 12.8
/** A bit this near (mm) is the very one that the hole was meant for. */
const exactMm = 0.02
/** A bit this far off the hole (mm) still makes it. */
const nearMm = 0.2

/**
 * Name the bit for a hole of this diameter (mm), in whichever unit has it, the build's own first: `1/4 in brad-point
 * bit`, `35 mm Forstner bit`; a circle cutter where no bit of the shop is near.
 */
export function bitFor(diameterMm: number, units: 'in' | 'mm'): string {
  const isSmall = diameterMm < forstnerFromMm
  const series: BitSeries[] = isSmall ? ['fraction', 'metric'] : ['forstner', 'metric forstner']
  const [first, second] = (units === 'in' ? series : series.reverse()).map((of) => bitOf(of, diameterMm))
  const off = (bit: {mm: number} | undefined) =>
    bit ? Math.abs(bit.mm - diameterMm) : Number.POSITIVE_INFINITY
  const isMade = off(second) <= exactMm && off(first) > exactMm
  const best = !isMade && (off(first) <= nearMm || off(first) <= off(second)) ? first : second
  if (best && (off(best) <= nearMm || isSmall))
    return `${best.name} ${isSmall ? 'brad-point' : 'Forstner'} bit`
  const size =
    units === 'in' ? `${Number((diameterMm / inchMm).toFixed(3))} in` : `${Number(diameterMm.toFixed(1))} mm`
  return `circle cutter set to ${size}`
}
