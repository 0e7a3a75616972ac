import type {HeadOutline, NeckOutline} from '../../plan/layout/outline.ts'
import {headPoint as facePoint, headCorners} from '../../plan/neck-shape/head-shape.ts'
import type {Point} from '../kit/shapes.ts'
import type {Instrument} from './instrument.ts'

// The instrument from the side: mm behind the playing face, to the right, and down from the nut line.

/**
 * Find a point over the head as seen from the side: `alongMm` from the nut line along the head's own face (positive),
 * `upMm` above that face.
 */
export function headPoint(head: HeadOutline, alongMm: number, upMm = 0): Point {
  const {behindMm, depthMm} = facePoint(head, alongMm)
  const lean = alongMm > head.flatToMm ? rad(head.angleDeg) : 0
  return [depthMm - upMm * Math.cos(lean), -behindMm - upMm * Math.sin(lean)]
}

/**
 * Find a point of the box as seen from the side: `deepMm` below its top's outer face, level with a distance from the
 * nut. The top leans away from the playing face by the neck's tilt, from the box's head-side edge on. In mm.
 */
export function toBox({neck, plan}: Instrument, deepMm: number, stationMm: number): Point {
  const tilt = rad(neck?.tiltDeg ?? 0)
  const atMm = plan.box?.atMm ?? 0
  const run = stationMm - atMm
  return [
    (neck?.aboveTopMm ?? 0) + run * Math.sin(tilt) + deepMm * Math.cos(tilt),
    atMm + run * Math.cos(tilt) - deepMm * Math.sin(tilt),
  ]
}

/**
 * Outline neck and head from the side as one closed line: mm behind the playing face (to the right) and down from the
 * nut line. A fingerboard that stops before the neck's end leaves a step, and a neck that runs through a box is cut
 * down in it.
 */
export function neckProfile(
  head: HeadOutline | undefined,
  {thicknessMm: deep, tailMm, fingerboard: board, cutDown = []}: NeckOutline,
): Point[] {
  const boardEndMm = board && board.toMm < tailMm ? board.toMm : tailMm
  const faceMm = (stationMm: number) => {
    const bare = stationMm > boardEndMm ? (board?.thicknessMm ?? 0) : 0
    const cut = cutDown.find(({fromMm, toMm}) => stationMm > fromMm && stationMm < toMm)
    return Math.max(bare, cut?.deepMm ?? 0)
  }
  const ends = [boardEndMm, ...cutDown.flatMap(({fromMm, toMm}) => [fromMm, toMm])]
  const places = [0, tailMm, ...new Set(ends.filter((at) => at > 0 && at < tailMm))].sort((a, b) => b - a)
  // From the tail back to the nut: each stretch level, each change a step.
  const face = places.slice(1).flatMap((from, i): Point[] => {
    const to = places[i]!
    const x = faceMm((from + to) / 2)
    return from > 0
      ? [
          [x, to],
          [x, from],
        ]
      : [[x, to]]
  })
  return [...headProfile(head, deep), [deep, tailMm], ...face]
}

/**
 * Outline the head from the side, from the playing face round to the neck's back, `deepMm` behind it. The back of a
 * leaning head meets the back of the neck where their thicknesses make them meet.
 */
function headProfile(head: HeadOutline | undefined, deepMm: number): Point[] {
  if (!head)
    return [
      [0, 0],
      [deepMm, 0],
    ]
  const {lengthMm, thicknessMm} = head
  return [
    ...headCorners(head, lengthMm).map(({behindMm, depthMm}): Point => [depthMm, -behindMm]),
    headPoint(head, lengthMm),
    headPoint(head, lengthMm, -thicknessMm),
    ...back(head, deepMm),
  ]
}

/** Find where the back of the head turns into that of the neck. */
function back({angleDeg, ledgeMm, thicknessMm, stepMm}: HeadOutline, deep: number): Point[] {
  const [sin, cos] = [Math.sin(rad(angleDeg)), Math.cos(rad(angleDeg))]
  if (sin >= 0.01) {
    const run = (deep - stepMm - thicknessMm * cos) / sin
    return [[deep, -ledgeMm - run * cos + thicknessMm * sin]]
  }
  const rear = stepMm + thicknessMm
  if (Math.abs(rear - deep) < 0.01) return []
  return [
    [rear, -ledgeMm],
    [deep, -ledgeMm],
  ]
}

/**
 * Find a scarf's glue line from the side: along the neck's sawn-off back, from where the head's back begins to the
 * head's face, since the piece sawn off is turned over and glued under the neck's end. In mm.
 */
export function scarfLine({head, neck, plan}: Instrument): [Point, Point] | undefined {
  const faceMm = plan.neck?.scarf?.faceMm
  if (!head || !neck || faceMm === undefined || head.ledgeMm + faceMm > head.lengthMm) return undefined
  const face = headPoint(head, head.ledgeMm + faceMm)
  const bend = neckProfile(head, neck).find(
    ([x, y]) => Math.abs(x - neck.thicknessMm) < 0.01 && y < neck.tailMm,
  )
  return bend && bend[1] > face[1] ? [[face[0], bend[1]], face] : undefined
}

const rad = (deg: number) => (deg * Math.PI) / 180
