import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import type {Bridge} from '../action/bridge.ts'
import {type BoxPlace, type BoxSizes, stationOf} from '../kit/box-place.ts'
import {type Conflict, isTooNear} from '../kit/conflicts.ts'
import type {Settled} from '../kit/settled.ts'
import {toMark, type WouldDo} from '../kit/would-do.ts'
import {type NeckTaper, neckWidthAt} from '../neck-shape/taper.ts'
import type {Block} from './box-blocks.ts'
import type {BridgeSeat} from './bridge-seat.ts'
import {type Circle, gapBetween, gapToRectangle, gapToSides, type Rectangle, rectangle} from './gap.ts'

/** A hole in the top, in mm, with what its rim keeps from everything around; a negative gap: it reaches in. */
export interface SoundHole extends Gaps, Circle {
  /** Its path in the build file. */
  of: string
  alongMm: number
  /** The file has none: one that fits. */
  proposed?: true | undefined
}

interface Gap {
  gapMm: number
  needsMm: number
}

interface Gaps {
  /** To the nearest outer edge of the box. */
  edge?: Gap | undefined
  neck?: Gap | undefined
  /** The nearest one. */
  block?: (Gap & {of: string}) | undefined
  /** The nearest hole before it in the file. */
  earlier?: (Gap & {of: string}) | undefined
  /** To the foot of a bridge on the top. */
  bridge?: Gap | undefined
}

/** What a sound hole's rim keeps from what is around it (mm): common practice, no source. */
export const soundHoleKeepsMm = {
  wall: inch(1 / 4),
  neck: inch(1 / 8),
  block: inch(1 / 8),
  hole: inch(3 / 8),
} as const

/** What stands in and on the box's top around a sound hole. */
export interface TopView {
  place: BoxPlace | undefined
  outside: BoxSizes['outside'] | undefined
  /** The neck over the box: where it ends, and how wide it is. */
  neck: {tailMm?: number | undefined} | undefined
  taper: NeckTaper | undefined
  blocks: readonly Block[] | undefined
  bridge: Bridge | undefined
  bridgeSeat: BridgeSeat | undefined
}

/**
 * Place the sound holes, with what each keeps from the box's edge, the neck, blocks, earlier holes and the bridge.
 * Where that is too little, it is a conflict; what would do keeps the hole clear of everything.
 */
export function planSoundHoles(
  {values, rulerMm}: Settled,
  view: TopView,
): {soundHoles: SoundHole[] | undefined; conflicts: Conflict[]} {
  const {place, outside} = view
  if (!place) return {soundHoles: undefined, conflicts: []}
  const gapsAround = gaugeAround(view)
  const holes: SoundHole[] = []
  const conflicts: Conflict[] = []
  for (const {of, hole, circle} of circlesOf(values, place)) {
    const gaps = gapsAround(circle, holes)
    const near = tooNear(gaps)
    if (near.length > 0) {
      const wouldDo = clearPlace(circle, {
        of,
        alongKey: hole.at ? 'at' : 'along',
        originMm: hole.at ? 0 : place.atMm,
        rulerMm,
        reachMm: outside?.lengthMm ?? 0,
        isClear: (moved) => tooNear(gapsAround(moved, holes)).length === 0,
      })
      conflicts.push(...near.map((one) => ({...one, of, wouldDo})))
    }
    holes.push({
      of,
      ...circle,
      alongMm: circle.stationMm - place.atMm,
      ...gaps,
      proposed: hole.diameter?.proposed,
    })
  }
  return {soundHoles: holes.length ? holes : undefined, conflicts}
}

/** List the holes in the top that have a place and a size, each with its path in the build file. */
function circlesOf({box}: BuildValues, place: BoxPlace) {
  return (box?.holes ?? []).flatMap((hole, i) => {
    const stationMm = stationOf(hole, place)
    if (stationMm === undefined || !hole.diameter) return []
    const circle: Circle = {stationMm, offMm: hole.off?.mm ?? 0, diameterMm: hole.diameter.mm}
    return [{of: `box.holes.${i + 1}`, hole, circle}]
  })
}

/** Tell whether every hole in the top keeps clear of the blocks under it. */
export function areHolesClear(
  values: BuildValues,
  {place, blocks = []}: Pick<TopView, 'place' | 'blocks'>,
): boolean {
  if (!place) return true
  const areas = blocks.map(outlineOf)
  return circlesOf(values, place).every(({circle}) =>
    areas.every((area) => !isTooNear({gapMm: gapToRectangle(circle, area), needsMm: soundHoleKeepsMm.block})),
  )
}

/** Measures from a sound hole's rim to all that is around it (mm). */
type Gauge = (hole: Circle, earlier: readonly SoundHole[]) => Gaps

function gaugeAround({place, outside, neck, taper, blocks = [], bridge, bridgeSeat}: TopView): Gauge {
  const top =
    place && outside && rectangle(place.atMm + outside.lengthMm / 2, 0, outside.lengthMm, outside.widthMm)
  const edgeNeedsMm = (outside?.sidesMm ?? 0) + soundHoleKeepsMm.wall
  const foot = bridge && bridgeSeat && rectangle(bridge.stationMm, 0, bridgeSeat.footMm, bridgeSeat.lengthMm)
  const stand = blocks.map((one) => ({of: one.of, area: outlineOf(one)}))
  return (hole, earlier) => {
    const to = (area: Rectangle | undefined, needsMm: number): Gap | undefined =>
      area && {gapMm: gapToRectangle(hole, area), needsMm}
    const block = nearest(stand.map(({of, area}) => ({of, gapMm: gapToRectangle(hole, area)})))
    const other = nearest(earlier.map((one) => ({of: one.of, gapMm: gapBetween(hole, one)})))
    return {
      edge: top && {gapMm: gapToSides(hole, top), needsMm: edgeNeedsMm},
      neck: to(place && neckOutline(hole, place.atMm, neck?.tailMm, taper), soundHoleKeepsMm.neck),
      block: block && {of: block.of, gapMm: block.gapMm, needsMm: soundHoleKeepsMm.block},
      earlier: other && {of: other.of, gapMm: other.gapMm, needsMm: soundHoleKeepsMm.hole},
      bridge: to(foot, 0),
    }
  }
}

/** Tells how much wood a hole has around it beyond what it must keep from all that is there (mm); negative: too little. */
export function roomAround(view: TopView): (hole: Circle) => number {
  const gapsAround = gaugeAround(view)
  return (hole) => {
    const {edge, neck, block, bridge} = gapsAround(hole, [])
    return Math.min(roomOf(edge), roomOf(neck), roomOf(block), roomOf(bridge))
  }
}

const roomOf = (gap: Gap | undefined) => (gap ? gap.gapMm - gap.needsMm : Number.POSITIVE_INFINITY)

/** List what a sound hole is too near to. */
function tooNear({edge, neck, block, earlier, bridge}: Gaps): Omit<Conflict, 'of'>[] {
  const around = [
    {kind: 'hole-edge', gap: edge},
    {kind: 'hole-neck', gap: neck},
    {kind: 'hole-block', gap: block, to: block?.of},
    {kind: 'hole-hole', gap: earlier, to: earlier?.of},
    {kind: 'hole-bridge', gap: bridge},
  ] as const
  return around.flatMap(({kind, gap, ...more}) =>
    gap && isTooNear(gap) ? [{kind, gapMm: gap.gapMm, needsMm: gap.needsMm, ...more}] : [],
  )
}

const nearest = <T extends {gapMm: number}>(all: readonly T[]): T | undefined =>
  all.reduce<T | undefined>((best, one) => (best && best.gapMm <= one.gapMm ? best : one), undefined)

const outlineOf = ({stationMm, offMm, lengthMm, widthMm}: Block) =>
  rectangle(stationMm, offMm, lengthMm, widthMm)

/** The neck over the box, as wide as it is beside the hole. */
function neckOutline(
  {stationMm}: Circle,
  boxAtMm: number,
  tailMm: number | undefined,
  taper: NeckTaper | undefined,
): Rectangle | undefined {
  if (tailMm === undefined) return undefined
  const halfMm = ((taper && neckWidthAt(stationMm, taper)) ?? 0) / 2
  return {fromMm: Math.min(boxAtMm, tailMm), toMm: tailMm, leftMm: -halfMm, rightMm: halfMm}
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
function clearPlace(hole: Circle, search: Search): WouldDo | undefined {
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
