import type {Point, Rect, Shape} from './shapes.ts'

/** Shapes put on a sheet: shifted by `by`, and cut off at `window`, both in the sheet's own mm. */
export interface Placed {
  shapes: readonly Shape[]
  by?: Point
  window?: Rect
}

/** One sheet of paper at full size, in mm from its upper left corner. */
export interface Sheet {
  widthMm: number
  heightMm: number
  content: readonly Placed[]
}

/** List all that lies on a sheet, in the sheet's own mm; nothing is cut off. */
export const shapesOn = ({content}: Sheet): Shape[] =>
  content.flatMap(({shapes, by: [dx, dy] = [0, 0]}) => move(shapes, dx, dy))

/** Shift shapes by so many mm to the right and down. */
export function move(shapes: readonly Shape[], dx: number, dy: number): Shape[] {
  const to = ([x, y]: Point): Point => [x + dx, y + dy]
  return shapes.map((shape) => {
    if (shape.is === 'path') return {...shape, points: shape.points.map(to)}
    if (shape.is === 'text') return {...shape, at: to(shape.at)}
    return {...shape, centre: to(shape.centre)}
  })
}
