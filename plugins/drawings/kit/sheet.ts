import type {Point, Rect, Shape} from './shape.ts'

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
