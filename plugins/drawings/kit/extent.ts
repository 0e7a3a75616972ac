import {type Arc, type Circle, type Point, pointOnCircle, type Rect, type Shape, type Text} from './shapes.ts'

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
    for (const point of reach(shape)) {
      const x = point[0] ?? 0
      const y = point[1] ?? 0
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
  if (shape.is === 'path') return passes(shape.points, rect, shape.closed)
  if (shape.is === 'arc') return ringTouches(shape, rect) && passes(chords(shape), rect)
  return ringTouches(shape, rect)
}

/** A ring passes through a rectangle that has points both nearer to its centre and farther from it than its radius. */
function ringTouches({centre: [cx, cy], radiusMm}: Arc | Circle, rect: Rect): boolean {
  const nearX = Math.max(rect.x - cx, 0, cx - rect.x - rect.width)
  const nearY = Math.max(rect.y - cy, 0, cy - rect.y - rect.height)
  const farX = Math.max(Math.abs(rect.x - cx), Math.abs(rect.x + rect.width - cx))
  const farY = Math.max(Math.abs(rect.y - cy), Math.abs(rect.y + rect.height - cy))
  return Math.hypot(nearX, nearY) < radiusMm && Math.hypot(farX, farY) > radiusMm
}

function passes(points: readonly Point[], rect: Rect, isClosed = false): boolean {
  for (let i = isClosed ? 0 : 1; i < points.length; i++)
    if (crosses(points[i === 0 ? points.length - 1 : i - 1]!, points[i]!, rect)) return true
  return false
}

/** An arc as points three degrees apart at most. */
function chords({centre, radiusMm, fromDeg, toDeg}: Arc): Point[] {
  const steps = Math.max(1, Math.ceil(Math.abs(toDeg - fromDeg) / 3))
  return Array.from({length: steps + 1}, (_, i) =>
    pointOnCircle(centre, radiusMm, fromDeg + ((toDeg - fromDeg) * i) / steps),
  )
}

/** Clip a segment to the rectangle's slabs, once it is not wholly to one side; what is left, if anything, lies inside. */
function crosses([x1, y1]: Point, [x2, y2]: Point, {x, y, width, height}: Rect): boolean {
  if ((x1 <= x && x2 <= x) || (x1 >= x + width && x2 >= x + width)) return false
  if ((y1 <= y && y2 <= y) || (y1 >= y + height && y2 >= y + height)) return false
  const [goX, goY] = [x2 - x1, y2 - y1]
  let [from, to] = [0, 1]
  if (goX !== 0) {
    const [a, b] = [(x - x1) / goX, (x + width - x1) / goX]
    from = Math.max(from, Math.min(a, b))
    to = Math.min(to, Math.max(a, b))
  }
  if (goY !== 0) {
    const [a, b] = [(y - y1) / goY, (y + height - y1) / goY]
    from = Math.max(from, Math.min(a, b))
    to = Math.min(to, Math.max(a, b))
  }
  return from < to
}

const narrow = /[ijl.,:;'|!’·]/
const slim = /[frtI /()°-]/
const wide = /[mwMW%—–@×]/
const capital = /\p{Lu}/u

/**
 * Estimate how wide a text is at most, in mm, in the sans serif faces that screens and printers have.
 * Meant to be too wide rather than too narrow, so that what fits here fits on the page.
 */
export function textWidthMm(text: string, sizeMm: number): number {
  let ems = 0
  for (const letter of text) ems += letterEms(letter)
  return ems * sizeMm
}

function letterEms(letter: string): number {
  if (narrow.test(letter)) return 0.32
  if (slim.test(letter)) return 0.42
  if (wide.test(letter)) return 1
  return capital.test(letter) ? 0.78 : 0.64
}

/** A capital's height, as a part of the text's size; a text's middle lies half of it above the line it stands on. */
export const capitalHeight = 0.7

/** The rectangle that a text takes at most: from above its ascenders to below its descenders. */
export function textBox({at: [x, y], text, sizeMm, anchor, turned}: Text): Rect {
  const width = textWidthMm(text, sizeMm)
  const before = anchor === 'start' ? 0 : anchor === 'end' ? width : width / 2
  const above = 0.5 * sizeMm
  const height = 1.1 * sizeMm
  return turned
    ? {x: x - above, y: y - (width - before), width: height, height: width}
    : {x: x - before, y: y - above, width, height}
}
