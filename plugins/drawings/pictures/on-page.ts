import type {Flat} from '../solids/region.ts'

/** Write a number of mm for a picture. */
export const num = (value: number): string => String(Math.round(value * 100) / 100 + 0)

/** Write a place on the page. */
export const at = ([x, y]: Flat) => `${num(x)} ${num(y)}`

/** The edges of what is drawn, without its numbers (mm). */
export interface Frame {
  left: number
  top: number
  right: number
  bottom: number
}
