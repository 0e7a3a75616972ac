import type {Point, Shape} from './shape.ts'

const swap = ([x, y]: Point): Point => [y, x]

/**
 * Exchange x and y of shapes, so that what was laid out down the page lies across it.
 * Turned text comes to stand upright and upright text is turned; it keeps its middle.
 */
export function transpose(shapes: readonly Shape[]): Shape[] {
  return shapes.map((shape) => {
    if (shape.is === 'path') return {...shape, points: shape.points.map(swap)}
    if (shape.is === 'circle') return {...shape, centre: swap(shape.centre)}
    if (shape.is === 'arc')
      return {...shape, centre: swap(shape.centre), fromDeg: 90 - shape.toDeg, toDeg: 90 - shape.fromDeg}
    const {turned, ...text} = shape
    return {...text, at: swap(shape.at), ...(turned ? {} : {turned: true})}
  })
}
