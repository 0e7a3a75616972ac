import {circle, type Point, path, type Shape} from '../kit/shape.ts'

const punchMm = 2.2

/** Mark where the point of a punch goes: a cross with a small ring. */
export function punch([x, y]: Point): Shape[] {
  return [
    path('punch', [x - punchMm, y], [x + punchMm, y]),
    path('punch', [x, y - punchMm], [x, y + punchMm]),
    circle('punch', [x, y], punchMm / 3),
  ]
}

/** Mark a hole that a bit makes: its punch, and its rim dotted. */
export function drilledHole(at: Point, diameterMm: number): Shape[] {
  return [circle('hole', at, diameterMm / 2), ...punch(at)]
}

/** Mark a hole that is cut out along its rim. */
export function cutHole(at: Point, diameterMm: number): Shape[] {
  return [circle('cut', at, diameterMm / 2), ...punch(at)]
}
