import {circle, type Point, path, type Rect, type Shape} from '../kit/shapes.ts'

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

/** Draw a bar to check a printer by: its ends, and a short mark at each step, in mm. Its words stand at its right. */
function bar([x, y]: Point, lengthMm: number, stepMm: number, words: string): Shape[] {
  const inner = Array.from({length: Math.round(lengthMm / stepMm) - 1}, (_, i) => x + (i + 1) * stepMm)
  return [
    path('bar', [x, y], [x + lengthMm, y]),
    path('bar', [x, y - 2], [x, y + 2]),
    path('bar', [x + lengthMm, y - 2], [x + lengthMm, y + 2]),
    ...inner.map((at) => path('bar', [at, y], [at, y + 1])),
    {is: 'text', ink: 'figure', at: [x + lengthMm + 2, y], text: words, sizeMm: 3, anchor: 'start'},
  ]
}

/** Draw both bars, 100 mm and 4 in, one above the other. */
export const bothBars = ([x, y]: Point): Shape[] => [
  ...bar([x, y], 100, 10, '100 mm'),
  ...bar([x, y + 6.5], 4 * 25.4, 25.4, '4 in'),
]
