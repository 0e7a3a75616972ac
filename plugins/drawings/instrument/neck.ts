import {neckWidthAt} from '../../plan/neck/taper.ts'
import type {NeckOutline, Outline} from '../../plan/outline.ts'
import type {Plan} from '../../plan/plan.ts'
import {circle, loop, type Point, path, type Shape} from '../kit/shapes.ts'
import {placedBox} from './box.ts'
import type {Hand} from './hand.ts'
import {neckProfile} from './head.ts'

/** Give the width of a neck's outline at a distance from the nut line, in mm. */
export function neckWidth({nutWidthMm, tailWidthMm, tailMm}: NeckOutline, stationMm: number): number {
  return neckWidthAt(stationMm, {nutMm: nutWidthMm, tailMm: tailWidthMm, tailStationMm: tailMm}) ?? nutWidthMm
}

/**
 * Draw the edges of neck and head from the front, the head laid flat along its own face: mm across the centre line and
 * down from the nut line. Drawn alike for either hand.
 */
export function neckFront(plan: Plan): Shape[] {
  const {outline} = plan
  const neck = outline?.neck
  if (!neck) return []
  const runs = neckRuns(plan)
  const half = (station: number) => neckWidth(neck, station) / 2
  const edges = runs.flatMap(({fromMm, toMm, seen}) =>
    [-1, 1].map((side) =>
      path(seen ? 'outline' : 'hidden', [side * half(fromMm), fromMm], [side * half(toMm), toMm]),
    ),
  )
  const across = (ink: 'outline' | 'hidden' | 'edge', station: number) =>
    path(ink, [-half(station), station], [half(station), station])
  const last = runs.at(-1)
  const board = neck.fingerboard
  return [
    ...edges,
    ...(last && !neck.isOpen ? [across(last.seen ? 'outline' : 'hidden', last.toMm)] : []),
    ...(board && board.toMm < neck.tailMm
      ? [across(neck.joins === 'through' ? 'outline' : 'edge', board.toMm)]
      : []),
    ...headFront(outline),
  ]
}

/** Draw the head's edges, open towards the neck, and the line where its face leaves the playing face. In mm. */
export function headFront({neck, head}: Outline): Shape[] {
  if (!neck) return []
  const half = neck.nutWidthMm / 2
  if (!head) return [path('outline', [-half, 0], [half, 0])]
  const wide = head.widthMm / 2
  const edge: Point[] = [
    [-wide, 0],
    [-wide, -head.lengthMm],
    [wide, -head.lengthMm],
    [wide, 0],
  ]
  const {ledgeMm} = head
  const isStepped = ledgeMm > 0 && (head.angleDeg > 0 || head.stepMm > 0)
  return [path('outline', ...edge), ...(isStepped ? [path('edge', [-wide, -ledgeMm], [wide, -ledgeMm])] : [])]
}

/** A stretch along the neck, in mm from the nut, and whether its edges are seen from the front. */
interface Run {
  fromMm: number
  toMm: number
  seen: boolean
}

/**
 * Part the neck, from the nut line to its end, into what is seen from the front and what the box's top hides.
 * A neck on top is seen all along; one that runs through is hidden within the box but for its fingerboard.
 */
function neckRuns(plan: Plan): Run[] {
  const neck = plan.outline?.neck
  const box = placedBox(plan)
  if (!neck) return []
  if (!box || neck.joins !== 'through') return [{fromMm: 0, toMm: neck.tailMm, seen: true}]
  const board = neck.fingerboard
  const hideFromMm = board ? Math.max(box.atMm, Math.min(board.toMm, box.tailMm)) : box.atMm
  const cuts = [
    {fromMm: 0, toMm: hideFromMm, seen: true},
    {fromMm: hideFromMm, toMm: Math.min(neck.tailMm, box.tailMm), seen: false},
    {fromMm: box.tailMm, toMm: neck.tailMm, seen: true},
  ]
  return cuts.filter(({fromMm, toMm}) => toMm > fromMm)
}

const dotRadiusMm = 1.2

/** Draw frets or marker lines across the neck, and the dots beside the player's edge. In mm. */
export function linesFront({scale, outline}: Plan, hand: Hand): Shape[] {
  const neck = outline?.neck
  if (!neck) return []
  const lines = (scale?.lines ?? []).map(({fromNutMm, widthMm}) => {
    const half = (widthMm ?? neckWidth(neck, fromNutMm)) / 2
    return path('edge', [-half, fromNutMm], [half, fromNutMm])
  })
  const dots = (scale?.dots ?? []).flatMap(({stationMm, count, side}) => {
    const edge =
      (side === 'bass' ? hand.bass : -hand.bass) * (neckWidth(neck, stationMm) / 2 - 2 * dotRadiusMm)
    return Array.from({length: count}, (_, i) =>
      circle('dot', [edge, stationMm + (i - (count - 1) / 2) * 3 * dotRadiusMm], dotRadiusMm),
    )
  })
  return [...lines, ...dots]
}

/** Draw neck and head from the side, dashed where the box hides them: outline, fingerboard, edge of the round-over. */
export function neckSide(plan: Plan): Shape[] {
  const neck = plan.outline?.neck
  if (!neck) return []
  const {fingerboard: board, roundOver, thicknessMm, aboveTopMm = 0, tailMm} = neck
  const box = placedBox(plan)
  const isWithin = ([x, y]: Point) =>
    box !== undefined && y > box.atMm && y < box.tailMm && x > aboveTopMm && x < aboveTopMm + box.depthMm
  const profile = neckProfile(plan)
  const isClearOfBox = !box || neck.joins === 'end' || neck.tiltDeg !== 0 || aboveTopMm >= thicknessMm - 0.01
  const shapes: Shape[] = isClearOfBox
    ? [loop('outline', ...profile)]
    : profile.flatMap((from, i) =>
        partly(from, profile[(i + 1) % profile.length]!, [box.atMm, box.tailMm], isWithin),
      )
  if (board) {
    const x = board.thicknessMm
    shapes.push(path('edge', [x, Math.max(0, board.fromMm)], [x, Math.min(tailMm, board.toMm)]))
  }
  if (roundOver && roundOver.radiusMm < thicknessMm) {
    const x = thicknessMm - roundOver.radiusMm
    shapes.push(path('edge', [x, roundOver.fromMm], [x, roundOver.toMm]))
  }
  return shapes
}

/** Draw an edge in parts, cut where it passes the given places along the neck: hidden ones dashed. */
function partly(
  from: Point,
  to: Point,
  cutsMm: readonly number[],
  isHidden: (point: Point) => boolean,
): Shape[] {
  const at = (t: number): Point => [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])]
  const cuts = [0, ...cutsMm.map((mm) => (mm - from[1]) / (to[1] - from[1])), 1]
    .filter((t) => t >= 0 && t <= 1)
    .sort((a, b) => a - b)
  return cuts.slice(1).flatMap((t, i) => {
    const start = cuts[i]!
    return t > start ? [path(isHidden(at((start + t) / 2)) ? 'hidden' : 'outline', at(start), at(t))] : []
  })
}
