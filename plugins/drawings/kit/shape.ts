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
