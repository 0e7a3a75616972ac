import type {Plan} from '../../plan/plan.ts'
import {circle, loop, type Point, path, type Shape} from '../kit/shapes.ts'
import type {Hand} from './hand.ts'
import {neckWidth} from './neck.ts'

/** The box's outside, in mm, once it lies somewhere along the neck. */
export interface PlacedBox {
  atMm: number
  tailMm: number
  widthMm: number
  depthMm: number
  sidesMm: number
  topMm: number
  backMm: number
}

/** Find the box where its place and its outside are known. */
export function placedBox({box}: Plan): PlacedBox | undefined {
  if (box?.atMm === undefined || !box.outside) return undefined
  return {...box.outside, atMm: box.atMm, tailMm: box.atMm + box.outside.lengthMm}
}

/** Draw the box's outline from the front, broken where the neck lies over its edges, and its sound holes. In mm. */
export function boxFront(plan: Plan, hand: Hand): Shape[] {
  const box = placedBox(plan)
  if (!box) return []
  const wide = box.widthMm / 2
  return [
    path('outline', [-wide, box.atMm], [-wide, box.tailMm]),
    path('outline', [wide, box.atMm], [wide, box.tailMm]),
    ...boxEnd(plan, wide, box.atMm),
    ...boxEnd(plan, wide, box.tailMm),
    ...soundHolesFront(plan, hand),
  ]
}

export function soundHolesFront({box}: Plan, hand: Hand): Shape[] {
  return (box?.soundHoles ?? []).map(({stationMm, offMm, diameterMm}) =>
    circle('outline', [hand.x(offMm), stationMm], diameterMm / 2),
  )
}

/** Draw an end of the box: whole, or hidden where the neck or its fingerboard lies over it. */
function boxEnd({outline}: Plan, wide: number, station: number): Shape[] {
  const whole = [path('outline', [-wide, station], [wide, station])]
  const neck = outline?.neck
  if (!neck || neck.joins === 'end') return whole
  const overToMm =
    neck.joins === 'on top' ? neck.tailMm : (neck.fingerboard?.toMm ?? Number.NEGATIVE_INFINITY)
  if (overToMm < station) return whole
  const half = neckWidth(neck, station) / 2
  return [
    path('outline', [-wide, station], [-half, station]),
    path('hidden', [-half, station], [half, station]),
    path('outline', [half, station], [wide, station]),
  ]
}

/**
 * Find a point of the box as seen from the side: `deepMm` below its top's outer face, level with a distance from the
 * nut. The top leans away from the playing face by the neck's tilt, from the box's head-side edge on. In mm.
 */
export function toBox({outline, box}: Plan, deepMm: number, stationMm: number): Point {
  const tilt = ((outline?.neck?.tiltDeg ?? 0) * Math.PI) / 180
  const atMm = box?.atMm ?? 0
  const run = stationMm - atMm
  return [
    (outline?.neck?.aboveTopMm ?? 0) + run * Math.sin(tilt) + deepMm * Math.cos(tilt),
    atMm + run * Math.cos(tilt) - deepMm * Math.sin(tilt),
  ]
}

/** Draw the box from the side: its outline, and top, back and ends dashed where they lie behind its side. In mm. */
export function boxSide(plan: Plan): Shape[] {
  const box = placedBox(plan)
  if (!box) return []
  const {atMm, tailMm, depthMm, sidesMm, topMm, backMm} = box
  const rectangle = (d1: number, s1: number, d2: number, s2: number): Point[] => [
    toBox(plan, d1, s1),
    toBox(plan, d2, s1),
    toBox(plan, d2, s2),
    toBox(plan, d1, s2),
  ]
  return [
    loop('outline', ...rectangle(0, atMm, depthMm, tailMm)),
    loop('hidden', ...rectangle(topMm, atMm + sidesMm, depthMm - backMm, tailMm - sidesMm)),
  ]
}
