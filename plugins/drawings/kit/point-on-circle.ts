import type {Point} from './shape.ts'

/** Find the point of a circle at an angle in degrees, 0 to the right and 90 down the page. */
export function pointOnCircle([x, y]: Point, radiusMm: number, deg: number): Point {
  const turn = (deg * Math.PI) / 180
  return [x + radiusMm * Math.cos(turn), y + radiusMm * Math.sin(turn)]
}
