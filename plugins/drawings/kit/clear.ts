import {pointOnCircle} from './point-on-circle.ts'
import type {Arc, Point, Rect, Shape} from './shape.ts'
import {textBox} from './text-box.ts'

/** Say whether two upright rectangles share any area. */
export function overlaps(a: Rect, b: Rect): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height
}

/** Say whether nothing that is drawn, line or text, passes through an upright rectangle. */
export function isClear(rect: Rect, shapes: readonly Shape[]): boolean {
  return !shapes.some((shape) => touches(shape, rect))
}

function touches(shape: Shape, rect: Rect): boolean {
  if (shape.is === 'text') return overlaps(textBox(shape), rect)
  if (shape.is === 'path')
    return passes(shape.closed ? [...shape.points, shape.points[0]!] : shape.points, rect)
  if (shape.is === 'arc') return passes(chords(shape), rect)
  // A ring passes through a rectangle that has points both nearer to its centre and farther from it than its radius.
  const [cx, cy] = shape.centre
  const nearX = Math.max(rect.x - cx, 0, cx - rect.x - rect.width)
  const nearY = Math.max(rect.y - cy, 0, cy - rect.y - rect.height)
  const farX = Math.max(Math.abs(rect.x - cx), Math.abs(rect.x + rect.width - cx))
  const farY = Math.max(Math.abs(rect.y - cy), Math.abs(rect.y + rect.height - cy))
  return Math.hypot(nearX, nearY) < shape.radiusMm && Math.hypot(farX, farY) > shape.radiusMm
}

const passes = (points: readonly Point[], rect: Rect) =>
  points.slice(1).some((end, i) => crosses(points[i]!, end, rect))

/** An arc as points three degrees apart at most. */
function chords({centre, radiusMm, fromDeg, toDeg}: Arc): Point[] {
  const steps = Math.max(1, Math.ceil(Math.abs(toDeg - fromDeg) / 3))
  return Array.from({length: steps + 1}, (_, i) =>
    pointOnCircle(centre, radiusMm, fromDeg + ((toDeg - fromDeg) * i) / steps),
  )
}

/** Clip a segment's parameter to the rectangle's slabs; what is left, if anything, lies inside. */
function crosses([x1, y1]: Point, [x2, y2]: Point, {x, y, width, height}: Rect): boolean {
  let [from, to] = [0, 1]
  const slabs = [
    [x1, x2 - x1, x, x + width],
    [y1, y2 - y1, y, y + height],
  ] as const
  for (const [start, step, low, high] of slabs) {
    if (step === 0) {
      if (start <= low || start >= high) return false
      continue
    }
    const [a, b] = [(low - start) / step, (high - start) / step]
    from = Math.max(from, Math.min(a, b))
    to = Math.min(to, Math.max(a, b))
  }
  return from < to
}
