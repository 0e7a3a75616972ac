import type {InkName} from './inks.ts'
import {pointOnCircle} from './point-on-circle.ts'
import {type Arc, arc, type Point} from './shape.ts'

/** Draw what of a circle, in mm, lies inside a closed outline, as arcs. */
export function clipCircle(ink: InkName, centre: Point, radiusMm: number, outline: readonly Point[]): Arc[] {
  const cuts = outline
    .flatMap((from, i) => cutsOf(from, outline[(i + 1) % outline.length]!, centre, radiusMm))
    .sort((a, b) => a - b)
  return cuts.flatMap((from, i) => {
    const to = i + 1 < cuts.length ? cuts[i + 1]! : cuts[0]! + 360
    const at = pointOnCircle(centre, radiusMm, (from + to) / 2)
    return to - from > 0.01 && isInside(at, outline) ? [arc(ink, centre, radiusMm, from, to)] : []
  })
}

/** The angles, in degrees, at which a circle passes a straight edge. */
function cutsOf([x1, y1]: Point, [x2, y2]: Point, [cx, cy]: Point, r: number): number[] {
  const [dx, dy, fx, fy] = [x2 - x1, y2 - y1, x1 - cx, y1 - cy]
  const a = dx * dx + dy * dy
  const b = fx * dx + fy * dy
  const root = b * b - a * (fx * fx + fy * fy - r * r)
  if (a === 0 || root <= 0) return []
  return [(-b - Math.sqrt(root)) / a, (-b + Math.sqrt(root)) / a]
    .filter((t) => t >= 0 && t < 1)
    .map((t) => (Math.atan2(fy + t * dy, fx + t * dx) * 180) / Math.PI)
}

function isInside([x, y]: Point, outline: readonly Point[]): boolean {
  let inside = false
  outline.forEach(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside
  })
  return inside
}
