import {screws as screwRows} from '../../tables/screws.ts'
import type {PlanPart, Settled} from '../part.ts'
import type {Plan} from '../plan.ts'
import type {WouldDo} from '../would-do.ts'
import {jointLoads} from './joint-loads.ts'
import {blockAstray, offBox, type ScrewPlace, screwEdge} from './screw-places.ts'
import {type Route, screwRoute} from './screw-route.ts'
import {type Bite, bitInBoth, pilotOf, screwSize, threadBites, withdrawalN} from './screw-size.ts'

export interface Fastener {
  /** The row of the build file it comes from. */
  of: string
  stationMm: number
  offMm: number
  size: number
  lengthMm: number
  /** From the head on. */
  through: string[]
  into: string
  /** up towards the playing face, down from it, or along the neck. */
  way: string
  /** flat or round. */
  head?: string | undefined
  /** What the tip sits in. */
  wood?: string | undefined
  /** soft or hard: what the pilot is sized by. */
  hardness: string
  shankMm: number
  /** Mid-thread average of a tapered screw. */
  rootMm: number
  /** The larger one of the design tables. */
  rootDesignMm?: number | undefined
  clearanceMm: number
  clearanceBit: string
  pilotMm: number
  pilotBit: string
  pilotBitMm: number
  /** Across a flat head. */
  countersinkMm?: number | undefined
  /** Wood under the head. */
  underHeadMm: number
  /** Without block or washer. */
  leastUnderHeadMm: number
  /** A block or a washer spreads its head. */
  hasPad: boolean
  joinsNeck: boolean
  /** Thread that bites. */
  threadMm: number
  leastThreadMm: number
  /** The shortest with enough thread. */
  shortestMm: number
  /** Negative: it comes out. */
  tipToFaceMm?: number | undefined
  /** The longest that stays 1/8 in below the far face. */
  longestMm?: number | undefined
  /** What it would come out through. */
  farFace?: string | undefined
  withdrawalN: number
  /** What the strings draw it by. */
  loadN?: number | undefined
  /** The joint is glued as well. */
  isGlued: boolean
  /** The smallest gauge that holds three times the load. */
  sizeForLoad?: number | undefined
  /** Where it stands too near an edge or an end. */
  edge?:
    | {
        piece: string
        isEnd: boolean
        gapMm: number
        needsMm: number
        /** What to change in the build file, and to what. */
        wouldDo?: WouldDo | undefined
      }
    | undefined
  /** What to change in the build file, and to what. */
  offBox?: WouldDo | undefined
  /** It is to go through or into a block, and none is there. */
  astray?:
    | {
        /** What to change in the build file, and to what. */
        wouldDo?: WouldDo | undefined
      }
    | undefined
}

/**
 * Work out each screw, in the file's order, the grid spread out: bits, wood under the head, thread, how far its tip
 * stays from the far face, what it holds and what the strings ask of it. Lengths in mm, forces in N. A screw that the
 * file does not say enough about is left out.
 */
export const fasteners: PlanPart = (settled, soFar) => {
  const worked = (soFar.screws ?? []).flatMap((place) => screwPlan(place, settled, soFar) ?? [])
  if (!worked.length) return {}
  const loads = jointLoads(
    worked.map(({fastener}) => fastener),
    settled,
    soFar,
  )
  return {
    fasteners: worked.map((screw, i) => {
      const loadN = loads[i]
      return {...screw.fastener, ...(loadN !== undefined && {loadN, ...gaugeFor(loadN, screw)})}
    }),
  }
}

/** The smallest gauge of the table that holds three times the load, where this one does not. */
function gaugeFor(loadN: number, {fastener, bites, isEndGrain}: ScrewPlan) {
  if (loadN * 3 <= fastener.withdrawalN) return {}
  const larger = screwRows.find(
    ({gauge}) =>
      gauge > fastener.size && withdrawalN(screwSize(gauge).shankMm, bites, isEndGrain) >= loadN * 3,
  )
  return larger ? {sizeForLoad: larger.gauge} : {}
}

/** What must stay under a tip and under a bare head, and the thread that must bite, at least: common practice, no source. */
const tipKeepsMm = 25.4 / 8
const leastUnderHeadMm = 25.4 / 4
const leastThread = {shanks: 2, mm: 25.4 / 4}

interface ScrewPlan {
  fastener: Fastener
  bites: readonly Bite[]
  isEndGrain: boolean
}

/** Work out one screw (mm, N), all but what the strings ask of it; undefined where the file says too little about it. */
function screwPlan(place: ScrewPlace, {values, units, rulerMm}: Settled, {box}: Plan): ScrewPlan | undefined {
  const row = values.screws?.[Number(place.of.split('.')[1]) - 1]
  const route = row && screwRoute(row, place, values, box)
  if (!row?.size || !row.length || !route) return undefined
  const isBlockless = route.missesBlock && !box?.blocks
  const underHeadMm = isBlockless ? 0 : thicknessOf(route)
  if (underHeadMm === undefined) return undefined
  const gauge = row.size.value
  const lengthMm = row.length.mm
  const size = screwSize(gauge)
  const roomMm = isBlockless ? undefined : route.holds.mm
  const threadMm = Math.max(0, Math.min(lengthMm - underHeadMm, roomMm ?? Number.POSITIVE_INFINITY))
  const {bites, tip, hardness} = threadBites(route.holds.layers, threadMm)
  const pilot = pilotOf(gauge, hardness)
  const isEndGrain = route.way === 'along' && route.holds.name === 'neck'
  const leastThreadMm = Math.max(leastThread.shanks * size.shankMm, leastThread.mm)
  const edge = screwEdge(size.shankMm, [route.holds, ...route.passes.filter(({name}) => name === 'block')], {
    ...place,
    originMm: place.stationPath.includes('.along') ? (box?.atMm ?? 0) : 0,
    rulerMm,
  })
  const through = route.passes.map(({name}) => name)
  const fastener: Fastener = {
    of: place.of,
    stationMm: place.stationMm,
    offMm: place.offMm,
    size: gauge,
    lengthMm,
    through,
    into: route.holds.name,
    way: route.way,
    ...(row.head && {head: row.head.value}),
    ...(tip && {wood: tip.row}),
    hardness,
    shankMm: size.shankMm,
    rootMm: size.rootMm,
    ...(size.rootDesignMm !== undefined && {rootDesignMm: size.rootDesignMm}),
    clearanceMm: size.clearance.mm,
    clearanceBit: bitInBoth(size.clearance, units, 'up', size.shankMm),
    pilotMm: pilot.mm,
    pilotBit: bitInBoth(pilot.bit, units, 'nearest', pilot.mm),
    pilotBitMm: pilot.bit.mm,
    ...(row.head?.value !== 'round' && {countersinkMm: 2 * size.shankMm}),
    underHeadMm,
    leastUnderHeadMm,
    hasPad: through.includes('block') || through.includes('washer'),
    joinsNeck: ['neck', 'heel'].includes(route.holds.name) || through.includes('neck'),
    threadMm,
    leastThreadMm,
    shortestMm: isBlockless ? 0 : underHeadMm + leastThreadMm,
    ...(roomMm !== undefined && {
      tipToFaceMm: underHeadMm + roomMm - lengthMm,
      longestMm: underHeadMm + roomMm - tipKeepsMm,
      farFace: farFace(route),
    }),
    withdrawalN: withdrawalN(size.shankMm, bites, isEndGrain),
    isGlued: Boolean(values.neck?.glue && !values.neck.laminations),
    ...(edge && !route.missesBlock && {edge}),
    ...(route.missesBlock && {astray: blockAstray(place, box)}),
    ...(!route.missesBlock && offBox(place, through, box, rulerMm)),
  }
  return {fastener, bites, isEndGrain}
}

function thicknessOf({passes}: Route): number | undefined {
  return passes.reduce<number | undefined>(
    (sum, {mm}) => (sum === undefined || mm === undefined ? undefined : sum + mm),
    0,
  )
}

function farFace({holds, way}: Route): string {
  if (holds.name === 'neck') return way === 'down' ? 'the back of the neck' : 'the playing face'
  if (holds.name === 'top') return 'the top’s face'
  return way === 'along'
    ? `the ${holds.name}’s far side`
    : `the ${holds.name}’s ${way === 'down' ? 'underside' : 'face'}`
}
