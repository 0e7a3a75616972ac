import type {HeadOutline} from '../../plan/layout/outline.ts'
import {across, circle, loop, type Point, path, type Shape} from '../kit/shapes.ts'
import {type Instrument, outwards} from './instrument.ts'
import {neckProfile} from './profile.ts'

/**
 * Draw the edges of neck and head from the front, the head laid flat along its own face: mm across the centre line and
 * down from the nut line. Drawn alike for either hand.
 */
export function neckFront(instrument: Instrument): Shape[] {
  const {neck, halfMm} = instrument
  if (!neck) return []
  const runs = neckRuns(instrument)
  const edges = runs.flatMap(({fromMm, toMm, seen}) =>
    [-1, 1].map((side) =>
      path(seen ? 'outline' : 'hidden', [side * halfMm(fromMm), fromMm], [side * halfMm(toMm), toMm]),
    ),
  )
  const last = runs.at(-1)
  const board = neck.fingerboard
  return [
    ...edges,
    ...(last && !neck.isOpen ? [across(last.seen ? 'outline' : 'hidden', halfMm(last.toMm), last.toMm)] : []),
    ...(board && board.toMm < neck.tailMm
      ? [across(neck.joins === 'through' ? 'outline' : 'edge', halfMm(board.toMm), board.toMm)]
      : []),
    ...headFront(instrument),
  ]
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
function neckRuns({neck, box}: Instrument): Run[] {
  if (!neck) return []
  if (!box || neck.joins !== 'through') return [{fromMm: 0, toMm: neck.tailMm, seen: true}]
  const board = neck.fingerboard
  const hideFromMm = board ? Math.max(box.atMm, Math.min(board.toMm, box.tailMm)) : box.atMm
  const runs = [
    {fromMm: 0, toMm: hideFromMm, seen: true},
    {fromMm: hideFromMm, toMm: Math.min(neck.tailMm, box.tailMm), seen: false},
    {fromMm: box.tailMm, toMm: neck.tailMm, seen: true},
  ]
  return runs.filter(({fromMm, toMm}) => toMm > fromMm)
}

const dotRadiusMm = 1.2

/** Draw frets or marker lines across the neck, and the dots beside the player's edge. In mm. */
export function linesFront(instrument: Instrument): Shape[] {
  const {neck, halfMm, plan} = instrument
  if (!neck) return []
  const lines = (plan.scale?.lines ?? []).map(({fromNutMm, widthMm}) =>
    across('edge', widthMm === undefined ? halfMm(fromNutMm) : widthMm / 2, fromNutMm),
  )
  const dots = dotsAlong(instrument, 3 * dotRadiusMm).map(({stationMm, out, halfMm: half}) =>
    circle('dot', [out * (half - 2 * dotRadiusMm), stationMm], dotRadiusMm),
  )
  return [...lines, ...dots]
}

/**
 * Place each dot by itself, those of one line so far apart (mm): its station, the side of the page that its edge of the
 * neck lies on, and half the neck's width at its line.
 */
export function dotsAlong(
  instrument: Instrument,
  pitchMm: number,
): {stationMm: number; out: -1 | 1; halfMm: number}[] {
  return (instrument.plan.scale?.dots ?? []).flatMap(({stationMm, count, side}) =>
    Array.from({length: count}, (_, i) => ({
      stationMm: stationMm + (i - (count - 1) / 2) * pitchMm,
      out: outwards(instrument, side),
      halfMm: instrument.halfMm(stationMm),
    })),
  )
}

/** Draw neck and head from the side, dashed where the box hides them: outline, fingerboard, edge of the round-over. */
export function neckSide({neck, head, box}: Instrument): Shape[] {
  if (!neck) return []
  const {fingerboard: board, roundOver, thicknessMm, aboveTopMm = 0, tailMm} = neck
  const isWithin = ([x, y]: Point) =>
    box !== undefined && y > box.atMm && y < box.tailMm && x > aboveTopMm && x < aboveTopMm + box.depthMm
  const profile = neckProfile(head, neck)
  const isClearOfBox = !box || neck.joins === 'end' || neck.tiltDeg !== 0 || aboveTopMm >= thicknessMm - 0.01
  const shapes: Shape[] = isClearOfBox
    ? [loop('outline', ...profile)]
    : profile.flatMap((from, i) =>
        partly([from, profile[(i + 1) % profile.length]!], [box.atMm, box.tailMm], isWithin),
      )
  if (board) {
    const x = board.thicknessMm
    shapes.push(
      path('edge', [x, Math.max(-(head?.lengthMm ?? 0), board.fromMm)], [x, Math.min(tailMm, board.toMm)]),
    )
  }
  if (roundOver && roundOver.radiusMm < thicknessMm) {
    const x = thicknessMm - roundOver.radiusMm
    shapes.push(path('edge', [x, roundOver.fromMm], [x, roundOver.toMm]))
  }
  return shapes
}

/** Draw an edge in parts, cut where it passes the given places along the neck: hidden ones dashed. */
function partly(
  [from, to]: readonly [Point, Point],
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

/** Draw the head's edges, open towards the neck, and the line where its face leaves the playing face. In mm. */
export function headFront({neck, head}: Instrument): Shape[] {
  if (!neck) return []
  if (!head) return [across('outline', neck.nutWidthMm / 2, 0)]
  const wide = head.widthMm / 2
  const edge = path('outline', [-wide, 0], [-wide, -head.lengthMm], [wide, -head.lengthMm], [wide, 0])
  return isStepped(head) ? [edge, across('edge', wide, -head.ledgeMm)] : [edge]
}

/** Say whether the head's face leaves the playing face at a line behind the nut. */
export const isStepped = ({ledgeMm, angleDeg, stepMm}: HeadOutline): boolean =>
  ledgeMm > 0 && (angleDeg > 0 || stepMm > 0)

/** Find how far from the nut line a scarf's glue line comes out on the head's face, along it (mm), where it does. */
export function scarfOnFaceMm({head, plan}: Instrument): number | undefined {
  const faceMm = plan.neck?.scarf?.faceMm
  if (!head || faceMm === undefined) return undefined
  const alongMm = head.ledgeMm + faceMm
  return alongMm < head.lengthMm ? alongMm : undefined
}

/** Draw where a scarf's glue line comes out on the head's face, from the front. In mm. */
export function scarfFront(instrument: Instrument): Shape[] {
  const {head} = instrument
  const alongMm = scarfOnFaceMm(instrument)
  return head?.joint === 'scarf' && alongMm !== undefined ? [across('edge', head.widthMm / 2, -alongMm)] : []
}
