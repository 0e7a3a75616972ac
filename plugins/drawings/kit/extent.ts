import {pointOnCircle} from './point-on-circle.ts'
import type {Rect, Shape} from './shape.ts'
import {textBox} from './text-box.ts'

const corners = ({x, y, width, height}: Rect) => [
  [x, y],
  [x + width, y + height],
]

/** The points that a shape reaches at most. */
function reach(shape: Shape): readonly (readonly number[])[] {
  if (shape.is === 'path') return shape.points
  if (shape.is === 'text') return corners(textBox(shape))
  const {
    centre: [x, y],
    radiusMm: r,
  } = shape
  if (shape.is === 'circle') return corners({x: x - r, y: y - r, width: 2 * r, height: 2 * r})
  const [low, high] = [Math.min(shape.fromDeg, shape.toDeg), Math.max(shape.fromDeg, shape.toDeg)]
  const quarters: number[] = []
  for (let deg = Math.ceil(low / 90) * 90; deg <= high; deg += 90) quarters.push(deg)
  return [low, ...quarters, high].map((deg) => pointOnCircle(shape.centre, r, deg))
}

/** The smallest upright rectangle, in mm, that holds all shapes, with a margin round it. */
export function extent(shapes: readonly Shape[], marginMm = 0): Rect {
  let left = Number.POSITIVE_INFINITY
  let top = Number.POSITIVE_INFINITY
  let right = Number.NEGATIVE_INFINITY
  let bottom = Number.NEGATIVE_INFINITY
  for (const shape of shapes)
    for (const [x = 0, y = 0] of reach(shape)) {
      left = Math.min(left, x)
      top = Math.min(top, y)
      right = Math.max(right, x)
      bottom = Math.max(bottom, y)
    }
  if (left > right) return {x: 0, y: 0, width: 0, height: 0}
  return {
    x: left - marginMm,
    y: top - marginMm,
    width: right - left + 2 * marginMm,
    height: bottom - top + 2 * marginMm,
  }
}
