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
  const [inches, metric]: BitSeries[] = isSmall ? ['fraction', 'metric'] : ['forstner', 'metric forstner']
  const first = bitOf(units === 'in' ? inches! : metric!, diameterMm)
  const second = bitOf(units === 'in' ? metric! : inches!, diameterMm)
  const firstOff = off(first, diameterMm)
  const secondOff = off(second, diameterMm)
  const isMade = secondOff <= exactMm && firstOff > exactMm
  const isFirst = !isMade && (firstOff <= nearMm || firstOff <= secondOff)
  const [best, bestOff] = isFirst ? [first, firstOff] : [second, secondOff]
  if (best && (bestOff <= nearMm || isSmall)) return `${best.name} ${isSmall ? 'brad-point' : 'Forstner'} bit`
  const size =
    units === 'in' ? `${Number((diameterMm / inchMm).toFixed(3))} in` : `${Number(diameterMm.toFixed(1))} mm`
  return `circle cutter set to ${size}`
}

const off = (bit: {mm: number} | undefined, diameterMm: number) =>
  bit ? Math.abs(bit.mm - diameterMm) : Number.POSITIVE_INFINITY
