import type {Plan} from '../../plan/shape/plan.ts'
import {loop, type Point, type Shape} from '../kit/shape.ts'
import {placedBox} from './placed-box.ts'

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
