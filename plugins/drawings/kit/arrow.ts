import {loop, type Path, type Point} from './shape.ts'

/**
 * Draw a closed, filled arrowhead (ISO 129-1 allows it filled) whose tip stands at a point.
 * `turnDeg` is where it points: 0 to the right, 90 down the page. Its length is given; it is a third as wide.
 */
export function arrow([x, y]: Point, turnDeg: number, lengthMm: number): Path {
  const turn = (turnDeg * Math.PI) / 180
  const [dx, dy] = [Math.cos(turn) * lengthMm, Math.sin(turn) * lengthMm]
  const foot = (side: number): Point => [x - dx - side * dy, y - dy + side * dx]
  return loop('arrow', [x, y], foot(1 / 6), foot(-1 / 6))
}
