import type {InkName} from './inks.ts'
import {arc, type Point, path, type Shape} from './shape.ts'

/** Draw an upright rectangle, in mm, whose corners are round, by no more than half its shorter side. */
export function pill(ink: InkName, [x1, y1]: Point, [x2, y2]: Point, cornerMm: number): Shape[] {
  const [left, right, top, bottom] = [Math.min(x1, x2), Math.max(x1, x2), Math.min(y1, y2), Math.max(y1, y2)]
  const r = Math.min(cornerMm, (right - left) / 2, (bottom - top) / 2)
  return [
    path(ink, [left + r, top], [right - r, top]),
    arc(ink, [right - r, top + r], r, -90, 0),
    path(ink, [right, top + r], [right, bottom - r]),
    arc(ink, [right - r, bottom - r], r, 0, 90),
    path(ink, [right - r, bottom], [left + r, bottom]),
    arc(ink, [left + r, bottom - r], r, 90, 180),
    path(ink, [left, bottom - r], [left, top + r]),
    arc(ink, [left + r, top + r], r, 180, 270),
  ]
}
