import {radians} from '../../tables/units.ts'
import type {Flat} from './region.ts'

/** A point or a direction in space: x across towards the last string, y from the nut line to the tail, z up; in mm. */
export type Vec = readonly [x: number, y: number, z: number]

export const plus = (a: Vec, b: Vec, times = 1): Vec => [
  a[0] + times * b[0],
  a[1] + times * b[1],
  a[2] + times * b[2],
]

export const minus = (a: Vec, b: Vec): Vec => plus(a, b, -1)

export const times = (a: Vec, by: number): Vec => [a[0] * by, a[1] * by, a[2] * by]

export const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]

export const cross = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
]

const lengthOf = (a: Vec): number => Math.sqrt(dot(a, a))

export const unit = (a: Vec): Vec => times(a, 1 / lengthOf(a))

/** Two directions square to one, so that the three turn like x, y and z. */
export function squareTo(normal: Vec): readonly [Vec, Vec] {
  const least = Math.abs(normal[0]) < 0.6 ? ([1, 0, 0] as const) : ([0, 1, 0] as const)
  const u = unit(cross(least, normal))
  return [u, cross(normal, u)]
}

/** A way to look at things from far away: parallel lines stay parallel. */
export interface Projection {
  /** Where a point comes to on the page, in mm: x to the right, y down. */
  page: (point: Vec) => Flat
  /** How near a point is to who looks, in mm. */
  nearness: (point: Vec) => number
  /** The direction towards who looks. */
  towards: Vec
}

/**
 * Look square onto the page from in front and above: the instrument's length runs to the right, turned by `turnDeg`
 * away from who looks, and the eye stands `riseDeg` above the level.
 * x comes to (sin t, cos t · sin r), y to (cos t, −sin t · sin r), z to (0, −cos r); t 45° and r 35.26° are isometric,
 * every edge √(2/3) as long as it is. Source: orthographic projection, ISO 5456-3.
 */
export function parallel(turnDeg: number, riseDeg: number): Projection {
  const [turn, rise] = [radians(turnDeg), radians(riseDeg)]
  const [ct, st, cr, sr] = [Math.cos(turn), Math.sin(turn), Math.cos(rise), Math.sin(rise)]
  const towards: Vec = [ct * cr, -st * cr, sr]
  return {
    page: (at) => [at[1] * ct + at[0] * st, (at[0] * ct - at[1] * st) * sr - at[2] * cr],
    nearness: (at) => dot(at, towards),
    towards,
  }
}
