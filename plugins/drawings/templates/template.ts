import type {Rect, Shape} from '../kit/shape.ts'

/** Something to lay on the wood at full size: shapes in mm within their frame. */
export interface Template {
  name: string
  shapes: Shape[]
  frame: Rect
}

/** How high the words of a template are, in mm: small, and still read at the bench (ISO 3098: 2.5, 3.5 mm). */
export const templateTextMm = 2.8
