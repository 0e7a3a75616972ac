import {radians} from '../../tables/units.ts'
import type {Flat} from './region.ts'
import type {Vec} from './space.ts'

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
    page: ([x, y, z]) => [y * ct + x * st, (x * ct - y * st) * sr - z * cr],
    nearness: ([x, y, z]) => x * towards[0] + y * towards[1] + z * towards[2],
    towards,
  }
}
