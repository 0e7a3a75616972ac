import {forstnerIn, forstnerMm, letterDrillsIn, numberDrillsIn} from '../../tables/drills.ts'
import {inch} from '../../tables/units.ts'

type BitSeries = 'fraction' | 'number' | 'letter' | 'metric' | 'forstner' | 'metric forstner'

/** A bit of a series. */
export interface Bit {
  series: BitSeries
  /** Its number or letter there; of a fraction, inches; of a metric one, mm. */
  size: number | string
  mm: number
}

/** What a hole is made with: a bit with a point or a rim, a circle cutter set to a width, or a screw's bits. */
export type HoleBit =
  | {with: 'brad-point'; bit: Bit}
  | {with: 'rim'; bit: Bit}
  | {with: 'cutter'; mm: number; units: 'in' | 'mm'}
  | TwistBits

/** One in inches, where bits do not end before the shank, and one in mm that does as well. */
interface TwistBits {
  with: 'twist'
  bit?: Bit | undefined
  or?: Bit | undefined
  /** Whose bit comes first. */
  units: 'in' | 'mm'
}

/** Fractions by 1/64 up to 1/2 in; metric twist drills by half a millimetre from 1 mm, as sets have them. */
const series: Readonly<Record<BitSeries, readonly Bit[]>> = {
  fraction: inInches(
    'fraction',
    Array.from({length: 32}, (_, i) => (i + 1) / 64),
  ),
  number: numberDrillsIn.map((size, i): Bit => ({series: 'number', size: i + 1, mm: inch(size)})).reverse(),
  letter: Object.entries(letterDrillsIn).map(([size, wide]) => ({series: 'letter', size, mm: inch(wide)})),
  metric: inMm(
    'metric',
    Array.from({length: 25}, (_, i) => (i + 2) / 2),
  ),
  forstner: inInches('forstner', forstnerIn),
  'metric forstner': inMm('metric forstner', forstnerMm),
}

function inInches(of: BitSeries, sizes: readonly number[]): Bit[] {
  return sizes.map((size) => ({series: of, size, mm: inch(size)}))
}

function inMm(of: BitSeries, sizes: readonly number[]): Bit[] {
  return sizes.map((mm) => ({series: of, size: mm, mm}))
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

/** Brad points are sold from here on, 3 mm and 1/8 in (mm); below, twist bits: common practice, no source. */
const bradPointFromMm = 3
/** From here on a bit with a rim cuts cleaner than one with a point (mm); common practice, no source. */
const forstnerFromMm = 12.8
/** A bit this near (mm) is the very one that the hole was meant for. */
const exactMm = 0.02
/** A bit this far off the hole (mm) still makes it. */
const nearMm = 0.2

/**
 * Pick the bit for a hole of this diameter (mm), in whichever unit has it, the build's own first; a circle cutter where
 * no bit of the shop is near.
 */
export function bitFor(diameterMm: number, units: 'in' | 'mm'): HoleBit {
  const isSmall = diameterMm < forstnerFromMm
  const [inches, metric]: BitSeries[] = isSmall ? ['fraction', 'metric'] : ['forstner', 'metric forstner']
  const first = bitOf(units === 'in' ? inches! : metric!, diameterMm)
  const second = bitOf(units === 'in' ? metric! : inches!, diameterMm)
  const firstOff = off(first, diameterMm)
  const secondOff = off(second, diameterMm)
  const isMade = secondOff <= exactMm && firstOff > exactMm
  const isFirst = !isMade && (firstOff <= nearMm || firstOff <= secondOff)
  const [best, bestOff] = isFirst ? [first, firstOff] : [second, secondOff]
  if (best && isSmall)
    return best.mm < bradPointFromMm - slackMm
      ? {with: 'twist', bit: best, units}
      : {with: 'brad-point', bit: best}
  if (best && bestOff <= nearMm) return {with: 'rim', bit: best}
  return {with: 'cutter', mm: diameterMm, units}
}

const off = (bit: {mm: number} | undefined, diameterMm: number) =>
  bit ? Math.abs(bit.mm - diameterMm) : Number.POSITIVE_INFINITY
