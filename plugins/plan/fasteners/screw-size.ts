import {screws} from '../../tables/screws.ts'
import {inch} from '../../tables/units.ts'
import {type Bit, bitOf, type HoleBit} from '../kit/bits.ts'
import type {Wood} from '../kit/woods.ts'
import type {Fastener} from './fastener.ts'
import type {Layer} from './screw-pieces.ts'

interface ScrewSize {
  shankMm: number
  rootMm: number
  /** The larger root of the design tables, where they have the gauge. */
  rootDesignMm?: number | undefined
  clearanceMm: number
  /** None in inches where bits end before the shank. */
  clearance: Bit | undefined
}

/**
 * Size a wood screw by its gauge number (mm): shank 0.060 + 0.013 in times the gauge (ANSI/ASME B18.6.1), root and
 * clearance bit from the table, but never a bit that the shank would not pass; a gauge that it lacks has a root of two
 * thirds of the shank (Wood Handbook, ch. 8).
 */
export const screwSize = (gauge: number): ScrewSize => ofTable.get(gauge) ?? sized(gauge)

function sized(gauge: number): ScrewSize {
  const row = screws.find((one) => one.gauge === gauge)
  const shankMm = inch(0.06 + 0.013 * gauge)
  const clearance = bitOf('fraction', Math.max(row ? inch(row.shankHoleIn) : 0, shankMm), 'up')
  return {
    shankMm,
    rootMm: row ? inch(row.rootIn) : (shankMm * 2) / 3,
    rootDesignMm: row?.rootDesignIn === undefined ? undefined : inch(row.rootDesignIn),
    clearanceMm: clearance?.mm ?? shankMm,
    clearance,
  }
}

const ofTable = new Map(screws.map(({gauge}) => [gauge, sized(gauge)]))

/**
 * Size the pilot hole of a screw in a wood: 70 % of the root in softwood, 90 % in hardwood, and the bit for it.
 * Source: Wood Handbook, FPL-GTR-282, p. 8-10; bits from the table of screws, or the nearest 1/64 in.
 */
export function pilotOf(gauge: number, hardness: 'soft' | 'hard'): {mm: number; bit: Bit} {
  const row = screws.find((one) => one.gauge === gauge)
  const mm = screwSize(gauge).rootMm * (hardness === 'hard' ? 0.9 : 0.7)
  return {mm, bit: bitOf('fraction', row ? inch(row.pilotIn[hardness]) : mm)!}
}

/** Pair a bit in inches with the metric one that does for so many mm, the build's own unit first. */
export function bitInBoth(
  bit: Bit | undefined,
  units: 'in' | 'mm',
  take: 'nearest' | 'up',
  leastMm: number,
): HoleBit {
  return {with: 'twist', bit, or: bitOf('metric', leastMm, take), units}
}

/**
 * Say what a thread bites, layer by layer, that lies between two depths (mm) of the piece that holds it; the wood its
 * tip ends in, and whether that is bored as hard or soft. Of a loose wood, the lightest that it may mean.
 */
export function threadBites(
  layers: readonly Layer[],
  [fromMm, toMm]: readonly [fromMm: number, toMm: number],
): {
  bites: Bite[]
  tip: Wood | undefined
  hardness: 'hard' | 'soft'
} {
  let topMm = 0
  let tip = layers[0]?.wood
  const bites = layers.map(({wood, mm}) => {
    const bite = Math.max(0, Math.min(topMm + mm, toMm) - Math.max(topMm, fromMm))
    topMm += mm
    if (bite > 1e-6) tip = wood
    const g12 = wood?.loose && wood.range ? wood.range.densityKgM3[0] / 1120 : (wood?.g12 ?? 0)
    return {g12, mm: bite}
  })
  return {bites, tip, hardness: isHard(tip) ? 'hard' : 'soft'}
}

/** A wood whose name leaves its kind open is bored as a hardwood from half the weight of water up. */
function isHard(wood: Wood | undefined): boolean {
  if (!wood) return true
  return wood.kind === undefined || wood.kind === 'sheet' ? wood.g12 >= 0.5 : wood.kind === 'hardwood'
}

/** A stretch of thread in one wood: ovendry mass over volume at 12 % moisture, and mm. */
export interface Bite {
  g12: number
  mm: number
}

/** What a thread in end grain still holds of what it does in side grain: Wood Handbook, ch. 8, from memory. */
const endGrain = 0.75

/**
 * Give the pull (N) that draws a wood screw of this shank (mm) out of the woods its thread sits in: Σ 108.25 G² D L.
 * Ultimate load, side grain, seasoned wood. Source: Wood Handbook, FPL-GTR-282, Eq. 8-10.
 */
export function withdrawalN(shankMm: number, bites: readonly Bite[], isEndGrain = false): number {
  const sideN = bites.reduce((sum, {g12, mm}) => sum + 108.25 * g12 ** 2 * shankMm * mm, 0)
  return isEndGrain ? sideN * endGrain : sideN
}

/** Say how thick a screw of a gauge is (mm), and which bits its holes are bored with. */
export function boredFor(gauge: number, hardness: Fastener['hardness'], units: 'in' | 'mm') {
  const {shankMm, rootMm, rootDesignMm, clearanceMm, clearance} = screwSize(gauge)
  const pilot = pilotOf(gauge, hardness)
  return {
    shankMm,
    rootMm,
    rootDesignMm,
    clearanceMm,
    clearanceBit: bitInBoth(clearance, units, 'up', shankMm),
    pilotMm: pilot.mm,
    pilotBit: bitInBoth(pilot.bit, units, 'nearest', pilot.mm),
    pilotBitMm: pilot.bit.mm,
  }
}
