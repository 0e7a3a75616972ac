import {screws} from '../../tables/screws.ts'
import {type Bit, bitOf} from '../drilling/bits.ts'

const inchMm = 25.4

export interface ScrewSize {
  shankMm: number
  rootMm: number
  /** The larger root of the design tables, where they have the gauge. */
  rootDesignMm?: number
  clearance: Bit
}

/**
 * Size a wood screw by its gauge number (mm): shank 0.060 + 0.013 in times the gauge (ANSI/ASME B18.6.1), root and
 * clearance bit from the table; a gauge that it lacks has a root of two thirds of the shank (Wood Handbook, ch. 8).
 */
export function screwSize(gauge: number): ScrewSize {
  const row = screws.find((one) => one.gauge === gauge)
  const shankMm = (0.06 + 0.013 * gauge) * inchMm
  const clearanceMm = row ? row.shankHoleIn * inchMm : shankMm
  return {
    shankMm,
    rootMm: row ? row.rootIn * inchMm : (shankMm * 2) / 3,
    ...(row?.rootDesignIn !== undefined && {rootDesignMm: row.rootDesignIn * inchMm}),
    clearance: bitOf('fraction', clearanceMm, 'up') ?? {name: 'a bit of the shank’s size', mm: shankMm},
  }
}

/**
 * Size the pilot hole of a screw in a wood: 70 % of the root in softwood, 90 % in hardwood, and the bit for it.
 * Source: Wood Handbook, FPL-GTR-282, p. 8-10; bits from the table of screws, or the nearest 1/64 in.
 */
export function pilotOf(gauge: number, hardness: 'soft' | 'hard'): {mm: number; bit: Bit} {
  const row = screws.find((one) => one.gauge === gauge)
  const mm = screwSize(gauge).rootMm * (hardness === 'hard' ? 0.9 : 0.7)
  return {mm, bit: bitOf('fraction', row ? row.pilotIn[hardness] * inchMm : mm)!}
}

/** Name a bit in inches and millimetres, the build's own first: `5/64 in (or 2 mm)`. */
export function bitInBoth(bit: Bit, units: 'in' | 'mm', take: 'nearest' | 'up', leastMm = bit.mm): string {
  const metric = bitOf('metric', leastMm, take)?.name
  if (!metric) return bit.name
  return units === 'in' ? `${bit.name} (or ${metric})` : `${metric} (or ${bit.name})`
}
