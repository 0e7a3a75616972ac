import type {InkName} from './inks.ts'

/** A place on the drawing: x to the right, y down the page, in mm. */
export type Point = readonly [number, number]

/** A line through points, straight from each to the next. */
export interface Path {
  is: 'path'
  ink: InkName
  points: readonly Point[]
  closed?: true
}
/** An arc; angles in degrees from the x axis, turning as the hands of a clock do on the page. */
export interface Arc {
  is: 'arc'
  ink: InkName
  centre: Point
  radiusMm: number
  fromDeg: number
  toDeg: number
}
interface Circle {
  is: 'circle'
  ink: InkName
  centre: Point
  radiusMm: number
}
/** One line of text; `at` lies at half its height. A turned one is read from the right-hand side. */
export interface Text {
  is: 'text'
  ink: 'figure' | 'name'
  at: Point
  text: string
  sizeMm: number
  anchor: 'start' | 'middle' | 'end'
  turned?: true
}
export type Shape = Path | Arc | Circle | Text

export interface Rect {
  x: number
  y: number
  width: number
  height: number
}

/** Shapes within a frame, at full size in mm, with words for those who don't see them. */
export interface Drawing {
  /** Letters, digits and hyphens; part of ids and classes. */
  name: string
  title: string
  says: string
  frame: Rect
  /** The height of its figures: line widths and sizes on a screen follow from it. */
  textMm: number
  shapes: readonly Shape[]
}

export const path = (ink: InkName, ...points: Point[]): Path => ({is: 'path', ink, points})

export const loop = (ink: InkName, ...points: Point[]): Path => ({is: 'path', ink, points, closed: true})

export const circle = (ink: InkName, centre: Point, radiusMm: number): Circle => ({
  is: 'circle',
  ink,
  centre,
  radiusMm,
})

export const arc = (ink: InkName, centre: Point, radiusMm: number, fromDeg: number, toDeg: number): Arc => ({
  is: 'arc',
  ink,
  centre,
  radiusMm,
  fromDeg,
  toDeg,
})

/** A rectangle with square corners, from two opposite ones. */
export const box = (ink: InkName, [x1, y1]: Point, [x2, y2]: Point): Path =>
  loop(ink, [x1, y1], [x2, y1], [x2, y2], [x1, y2])

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

/** Find the point of a circle at an angle in degrees, 0 to the right and 90 down the page. */
export function pointOnCircle([x, y]: Point, radiusMm: number, deg: number): Point {
  const turn = (deg * Math.PI) / 180
  return [x + radiusMm * Math.cos(turn), y + radiusMm * Math.sin(turn)]
}

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

/** Carry every point of shapes somewhere else; radii, angles and text stay (so: shift, or mirror circles and paths). */
function carry(shapes: readonly Shape[], to: (point: Point) => Point): Shape[] {
  return shapes.map((shape) => {
    if (shape.is === 'path') return {...shape, points: shape.points.map(to)}
    if (shape.is === 'text') return {...shape, at: to(shape.at)}
    return {...shape, centre: to(shape.centre)}
  })
}

/** Shift shapes by so many mm to the right and down. */
export const move = (shapes: readonly Shape[], dx: number, dy: number): Shape[] =>
  carry(shapes, ([x, y]) => [x + dx, y + dy])

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
