import {type NeckTaper, neckTaper, neckWidthAt} from '../neck/taper.ts'
import type {PlanPart} from '../part.ts'
import {stationOf} from '../station-of.ts'
import {toMark, type WouldDo} from '../would-do.ts'
import type {Box} from './box.ts'
import type {Block} from './box-blocks.ts'
import {type Circle, gapBetween, gapToRectangle, gapToSides, type Rectangle, rectangle} from './gap.ts'

export interface SoundHole {
  /** Its path in the build file. */
  of: string
  stationMm: number
  alongMm: number
  offMm: number
  diameterMm: number
  /** To the nearest outer edge of the box. */
  edge?:
    | {
        gapMm: number
        needsMm: number
      }
    | undefined
  neck?:
    | {
        gapMm: number
        needsMm: number
      }
    | undefined
  /** The nearest one. */
  block?:
    | {
        of: string
        gapMm: number
        needsMm: number
      }
    | undefined
  /** The nearest hole before it in the file. */
  earlier?:
    | {
        of: string
        gapMm: number
        needsMm: number
      }
    | undefined
  /** To the foot of a bridge on the top. */
  bridge?:
    | {
        gapMm: number
        needsMm: number
      }
    | undefined
  /** Where it keeps clear of everything; the nearest place, or else a smaller one. */
  wouldDo?: WouldDo | undefined
}

/**
 * Place the sound holes, in mm from the nut line, along the box and off the centre line, with what each keeps from
 * the box's edge, the neck, blocks, earlier holes and the bridge, and, where that is too little, what would do.
 */
export const soundHoles: PlanPart = ({values, rulerMm}, soFar) => {
  const {box, bridge} = soFar
  if (box?.atMm === undefined) return {}
  const seat = box.bridgeSeat
  const view: TopView = {
    box: {...box, atMm: box.atMm},
    taper: neckTaper(values),
    bridge: bridge && seat ? rectangle(bridge.stationMm, 0, seat.footMm, seat.lengthMm) : undefined,
  }
  const holes: SoundHole[] = []
  for (const [i, hole] of (values.box?.holes ?? []).entries()) {
    const stationMm = stationOf(hole, box)
    if (stationMm === undefined || !hole.diameter) continue
    const circle = {stationMm, offMm: hole.off?.mm ?? 0, diameterMm: hole.diameter.mm}
    const gaps = holeGaps(circle, holes, view)
    const of = `box.holes.${i + 1}`
    const wouldDo = isHoleClear(gaps)
      ? undefined
      : clearPlace(circle, {
          of,
          alongKey: hole.at ? 'at' : 'along',
          originMm: hole.at ? 0 : box.atMm,
          rulerMm,
          reachMm: box.outside?.lengthMm ?? 0,
          isClear: (moved) => isHoleClear(holeGaps(moved, holes, view)),
        })
    holes.push({of, ...circle, alongMm: stationMm - box.atMm, ...gaps, ...(wouldDo && {wouldDo})})
  }
  return holes.length ? {box: {...box, soundHoles: holes}} : {}
}

const inchMm = 25.4
const slackMm = 1e-6

/** What a sound hole's rim keeps from what is around it (mm): common practice, no source. */
const keepsMm = {
  wall: inchMm / 4,
  neck: inchMm / 8,
  block: inchMm / 8,
  hole: (inchMm * 3) / 8,
} as const

/** What stands in and on the box's top around a sound hole. */
interface TopView {
  box: Box & {atMm: number}
  taper: NeckTaper | undefined
  bridge: Rectangle | undefined
}

/** Measure from a sound hole's rim to the box's edge, the neck, the nearest block, earlier holes and the bridge (mm). */
function holeGaps(
  hole: Circle,
  earlier: readonly (Circle & {of: string})[],
  view: TopView,
): Partial<SoundHole> {
  const {box, bridge} = view
  const tailMm = box.neck?.tailMm
  const block = nearest(
    (box.blocks ?? []).map((one) => ({of: one.of, gapMm: gapToRectangle(hole, outlineOf(one))})),
  )
  const other = nearest(earlier.map((one) => ({of: one.of, gapMm: gapBetween(hole, one)})))
  return {
    ...(box.outside && {
      edge: {
        gapMm: gapToSides(hole, boxOutline(box.atMm, box.outside)),
        needsMm: box.outside.sidesMm + keepsMm.wall,
      },
    }),
    ...(tailMm !== undefined && {
      neck: {gapMm: gapToRectangle(hole, neckOutline(hole, view, tailMm)), needsMm: keepsMm.neck},
    }),
    ...(block && {block: {...block, needsMm: keepsMm.block}}),
    ...(other && {earlier: {...other, needsMm: keepsMm.hole}}),
    ...(bridge && {bridge: {gapMm: gapToRectangle(hole, bridge), needsMm: 0}}),
  }
}

/** Tell whether a sound hole keeps clear of everything it should. */
function isHoleClear({edge, neck, block, earlier, bridge}: Partial<SoundHole>): boolean {
  return [edge, neck, block, earlier, bridge].every(
    (around) => around === undefined || around.gapMm >= around.needsMm - slackMm,
  )
}

const nearest = <T extends {gapMm: number}>(all: readonly T[]): T | undefined =>
  all.reduce<T | undefined>((best, one) => (best && best.gapMm <= one.gapMm ? best : one), undefined)

const outlineOf = ({stationMm, offMm, lengthMm, widthMm}: Block) =>
  rectangle(stationMm, offMm, lengthMm, widthMm)

function boxOutline(atMm: number, {lengthMm, widthMm}: {lengthMm: number; widthMm: number}): Rectangle {
  return rectangle(atMm + lengthMm / 2, 0, lengthMm, widthMm)
}

/** The neck over the box, as wide as it is beside the hole. */
function neckOutline({stationMm}: Circle, {box, taper}: TopView, tailMm: number): Rectangle {
  const halfMm = ((taper && neckWidthAt(stationMm, taper)) ?? 0) / 2
  return {fromMm: Math.min(box.atMm, tailMm), toMm: tailMm, leftMm: -halfMm, rightMm: halfMm}
}

interface Search {
  /** The hole's path in the build file. */
  of: string
  /** The key that says how far along it stands, and where that is measured from (mm from the nut line). */
  alongKey: 'at' | 'along'
  originMm: number
  rulerMm: number
  /** How far it may move. */
  reachMm: number
  isClear: (hole: Circle) => boolean
}

/** Coarser steps where a fine ruler would make the search long. */
const mostSteps = 400

/**
 * Find what one change of a hole in the top would clear it of everything: the nearest mark of the ruler along or
 * across, or else the largest smaller diameter, as the path to change and its value in mm. Undefined where none does.
 */
function clearPlace(hole: Circle, search: Search): {path: string; mm: number} | undefined {
  const stepMm = search.rulerMm * Math.max(1, Math.ceil(search.reachMm / search.rulerMm / mostSteps))
  const start = {along: hole.stationMm - search.originMm, across: hole.offMm}
  for (let moveMm = 0; moveMm <= search.reachMm; moveMm += stepMm)
    for (const [sign, side] of [
      [-1, 'down'],
      [1, 'up'],
    ] as const) {
      const alongMm = toMark(start.along + sign * moveMm, search.rulerMm, side)
      if (search.isClear({...hole, stationMm: search.originMm + alongMm}))
        return {path: `${search.of}.${search.alongKey}`, mm: alongMm}
      const offMm = toMark(start.across + sign * moveMm, search.rulerMm, side)
      if (search.isClear({...hole, offMm})) return {path: `${search.of}.off`, mm: offMm}
    }
  for (let diameterMm = toMark(hole.diameterMm, search.rulerMm, 'down'); diameterMm > 0; diameterMm -= stepMm)
    if (search.isClear({...hole, diameterMm})) return {path: `${search.of}.diameter`, mm: diameterMm}
  return undefined
}
