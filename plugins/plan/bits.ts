import {forstnerIn, forstnerMm, letterDrillsIn, numberDrillsIn} from '../tables/drills.ts'
import {inch, inchMm} from '../tables/units.ts'

export interface Bit {
  /** As it is asked for: `5/64 in`, `No. 34`, `E`, `2 mm`. */
  name: string
  mm: number
}

type BitSeries = 'fraction' | 'number' | 'letter' | 'metric' | 'forstner' | 'metric forstner'

/** Fractions by 1/64 up to 1/2 in; metric twist drills by half a millimetre from 1 mm, as sets have them. */
const series: Readonly<Record<BitSeries, readonly Bit[]>> = {
  fraction: Array.from({length: 32}, (_, i) => ({name: inches((i + 1) / 64), mm: inch((i + 1) / 64)})),
  number: numberDrillsIn.map((size, i) => ({name: `No. ${i + 1}`, mm: inch(size)})).reverse(),
  letter: Object.entries(letterDrillsIn).map(([name, size]) => ({name, mm: inch(size)})),
  metric: Array.from({length: 25}, (_, i) => ({name: `${(i + 2) / 2} mm`, mm: (i + 2) / 2})),
  forstner: forstnerIn.map((size) => ({name: inches(size), mm: inch(size)})),
  'metric forstner': forstnerMm.map((mm) => ({name: `${mm} mm`, mm})),
}

/**
 * Pick the bit of a series nearest to a diameter (mm), or with `up` the smallest that is not smaller; the lower one
 * of a tie. Undefined where the series ends before it.
 */
export function bitOf(
  of: BitSeries,
  diameterMm: number,
  take: 'nearest' | 'up' = 'nearest',
): Bit | undefined {
  const bits = series[of]
  if (take === 'up') return bits.find(({mm}) => mm >= diameterMm - slackMm)
  const last = bits.at(-1)!
  if (diameterMm > last.mm + inch(1 / 64)) return undefined
  return bits.reduce((best, bit) =>
    Math.abs(bit.mm - diameterMm) < Math.abs(best.mm - diameterMm) - slackMm ? bit : best,
  )
}

const slackMm = 1e-6

/** Write sixty-fourths of an inch as a fraction in its lowest terms: `1 3/8 in`. */
function inches(size: number): string {
  const whole = Math.floor(size)
  let [over, under] = [Math.round((size - whole) * 64), 64]
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2]
  return [whole || '', over ? `${over}/${under}` : ''].filter(Boolean).join(' ') + ' in'
}

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
