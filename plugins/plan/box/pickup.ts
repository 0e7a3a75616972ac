import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import type {Bridge} from '../action/bridge.ts'
import {stationOf} from '../kit/box-place.ts'
import type {Box} from './box.ts'
import {type Circle, gapToRectangle, gapToSides, rectangle} from './gap.ts'
import {type Jack, planJack} from './jack.ts'

/** The pickup, in mm from the nut line and off the centre line, with the room there is for it. */
export interface Pickup {
  kind?: string | undefined
  under?: string | undefined
  stationMm?: number | undefined
  offMm?: number | undefined
  diameterMm?: number | undefined
  thicknessMm?: number | undefined
  /** The widest disc that fits there. */
  largestMm?: number | undefined
  /** What it would run into first. */
  against?: string | undefined
  capacitanceNf?: number | undefined
  /** Below this it fades into a load of 1 MΩ. */
  cornerHz?: number | undefined
  /** The same into a load of 50 kΩ. */
  cornerLowHz?: number | undefined
  jack?: Jack | undefined
}

/** No disc is smaller (mm): common practice, no source. */
const smallestMm = inch(1 / 4)

/**
 * Place the pickup and its jack, with the room there is for both, and say below which frequency a piezo fades into
 * its load. One under the bridge lies at the bridge line, on the centre line.
 */
export function planPickup(
  values: BuildValues,
  box: Box | undefined,
  bridge: Bridge | undefined,
): Pickup | undefined {
  const given = values.pickup
  if (!given) return undefined
  const isUnderBridge = given.under?.value === 'bridge'
  const stationMm = stationOf(given, box) ?? (isUnderBridge ? bridge?.stationMm : undefined)
  const spot = stationMm === undefined ? undefined : {stationMm, offMm: given.off?.mm ?? 0}
  const hasStrapButtons = values.extras?.some(({value}) => /strap/i.test(value)) ?? false
  const nf = given.kind?.value === 'piezo' ? given.capacitance?.nf : undefined
  return {
    kind: given.kind?.value,
    under: given.under?.value,
    ...spot,
    diameterMm: given.diameter?.mm,
    thicknessMm: given.thickness?.mm,
    ...(given.diameter && box && pickupRoom(spot, given.thickness?.mm, box)),
    capacitanceNf: nf,
    cornerHz: nf === undefined ? undefined : cornerHz(nf, 1e6),
    cornerLowHz: nf === undefined ? undefined : cornerHz(nf, 5e4),
    jack: given.jack && planJack(given.jack, box ?? {}, {hasStrapButtons, strings: values.strings?.length}),
  }
}

/**
 * Find how wide a disc (mm) fits under the top at a place, and what it would run into first: a wall, a block, or a
 * neck that runs through with less daylight than the disc is thick. Without a place, what the inside takes at all.
 */
function pickupRoom(
  spot: {stationMm: number; offMm: number} | undefined,
  thicknessMm: number | undefined,
  box: Box,
): {largestMm: number; against: string} | undefined {
  const {inside, outside, atMm, neck} = box
  if (!inside || !outside) return undefined
  const across = {largestMm: Math.min(inside.lengthMm, inside.widthMm), against: 'the walls'}
  if (!spot || atMm === undefined) return across
  const point: Circle = {...spot, diameterMm: 0}
  const walls = rectangle(atMm + outside.lengthMm / 2, 0, inside.lengthMm, inside.widthMm)
  const gaps = [
    {against: 'the walls', mm: gapToSides(point, walls)},
    ...(box.blocks ?? []).map(({stationMm, offMm, lengthMm, widthMm}) => ({
      against: 'a block',
      mm: gapToRectangle(point, rectangle(stationMm, offMm, lengthMm, widthMm)),
    })),
  ]
  if (neck?.joins === 'through' && thicknessMm !== undefined && thicknessMm > (neck.gapMm ?? thicknessMm)) {
    const neckMm = (neck.tailMm ?? box.tailMm ?? atMm) - atMm
    gaps.push({
      against: 'the neck',
      mm: gapToRectangle(point, rectangle(atMm + neckMm / 2, 0, neckMm, neck.widthMm)),
    })
  }
  const least = gaps.reduce((best, gap) => (gap.mm < best.mm ? gap : best))
  return {largestMm: 2 * least.mm < smallestMm ? 0 : 2 * least.mm, against: least.against}
}

/**
 * Give the frequency (Hz) below which a source of this capacitance (nF) fades into a load (Ω): 1/(2πRC).
 * Source: OpenStax University Physics vol. 2, §15.6.
 */
export function cornerHz(capacitanceNf: number, loadOhm: number): number {
  return 1 / (2 * Math.PI * loadOhm * capacitanceNf * 1e-9)
}
