import type {Point, Shape} from './shape.ts'

/** Carry every point of shapes somewhere else; radii, angles and text stay (so: shift, or mirror circles and paths). */
export function carry(shapes: readonly Shape[], to: (point: Point) => Point): Shape[] {
  return shapes.map((shape) => {
    if (shape.is === 'path') return {...shape, points: shape.points.map(to)}
    if (shape.is === 'text') return {...shape, at: to(shape.at)}
    return {...shape, centre: to(shape.centre)}
  })
}

/** Shift shapes by so many mm to the right and down. */
export const move = (shapes: readonly Shape[], dx: number, dy: number): Shape[] =>
  carry(shapes, ([x, y]) => [x + dx, y + dy])
