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
export interface Circle {
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
  turned?: true | undefined
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

/** A line square across the centre line at 0, as far to its left as to its right. */
export const across = (ink: InkName, halfMm: number, y: number): Path => path(ink, [-halfMm, y], [halfMm, y])

/** A rectangle with square corners, from two opposite ones. */
export const rectangle = (ink: InkName, [x1, y1]: Point, [x2, y2]: Point): Path =>
  loop(ink, [x1, y1], [x2, y1], [x2, y2], [x1, y2])

/** A rectangle about its middle. */
export const rectangleAbout = (ink: InkName, [x, y]: Point, widthMm: number, heightMm: number): Path =>
  rectangle(ink, [x - widthMm / 2, y - heightMm / 2], [x + widthMm / 2, y + heightMm / 2])

/** Two lines that cross square in their middles. */
export const cross = (ink: InkName, [x, y]: Point, armMm: number): Path[] => [
  path(ink, [x - armMm, y], [x + armMm, y]),
  path(ink, [x, y - armMm], [x, y + armMm]),
]

export const circle = (ink: InkName, centre: Point, radiusMm: number): Circle => ({
  is: 'circle',
  ink,
  centre,
  radiusMm,
})

export const arc = (
  ink: InkName,
  centre: Point,
  radiusMm: number,
  [fromDeg, toDeg]: readonly [number, number],
): Arc => ({is: 'arc', ink, centre, radiusMm, fromDeg, toDeg})

/** A line of text: a figure that starts at `at`, unless it is said otherwise. */
export const label = (
  text: string,
  at: Point,
  sizeMm: number,
  {ink = 'figure', anchor = 'start', turned}: Partial<Pick<Text, 'ink' | 'anchor' | 'turned'>> = {},
): Text => ({is: 'text', ink, at, text, sizeMm, anchor, turned})

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
