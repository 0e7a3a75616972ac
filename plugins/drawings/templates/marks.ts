import {barNames} from '../../words/drawings/templates.ts'
import {circle, cross, label, type Point, path, type Rect, type Shape} from '../kit/shapes.ts'

/** Something to lay on the wood at full size: shapes in mm within their frame. */
export interface Template {
  name: string
  shapes: Shape[]
  frame: Rect
}

/** How high the words of a template are, in mm: small, and still read at the bench (ISO 3098: 2.5, 3.5 mm). */
export const templateTextMm = 2.8

const punchMm = 2.2

/** Mark where the point of a punch goes: a cross with a small ring. */
export const punch = (at: Point): Shape[] => [
  ...cross('punch', at, punchMm),
  circle('punch', at, punchMm / 3),
]

/** Mark a hole that a bit makes: its punch, and its rim dotted. */
export const drilledHole = (at: Point, diameterMm: number): Shape[] => [
  circle('hole', at, diameterMm / 2),
  ...punch(at),
]

/** Mark a hole that is cut out along its rim. */
export const cutHole = (at: Point, diameterMm: number): Shape[] => [
  circle('cut', at, diameterMm / 2),
  ...punch(at),
]

/** Draw both bars to check a printer by, 100 mm and 4 in, one above the other. */
export const bothBars = ([x, y]: Point): Shape[] => [
  ...bar([x, y], 100, 10, barNames.metric),
  ...bar([x, y + 6.5], 4 * 25.4, 25.4, barNames.inches),
]

/** A bar's ends, and a short mark at each step, in mm. Its name stands at its right. */
function bar([x, y]: Point, lengthMm: number, stepMm: number, name: string): Shape[] {
  const inner = Array.from({length: Math.round(lengthMm / stepMm) - 1}, (_, i) => x + (i + 1) * stepMm)
  return [
    path('bar', [x, y], [x + lengthMm, y]),
    path('bar', [x, y - 2], [x, y + 2]),
    path('bar', [x + lengthMm, y - 2], [x + lengthMm, y + 2]),
    ...inner.map((at) => path('bar', [at, y], [at, y + 1])),
    label(name, [x + lengthMm + 2, y], 3),
  ]
}
