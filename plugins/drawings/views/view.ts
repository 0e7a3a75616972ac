import type {Plan} from '../../plan/shape/plan.ts'
import {extent} from '../kit/extent.ts'
import type {Drawing, Shape} from '../kit/shape.ts'

/** Frame what was laid out, with a margin of half a line of text. */
export function view(
  plan: Plan,
  {name, title, says}: {name: string; title: string; says: string},
  shapes: readonly Shape[],
  textMm: number,
): Drawing {
  return {
    name,
    title: plan.title ? `${plan.title}: ${title}` : title,
    says,
    textMm,
    shapes,
    frame: extent(shapes, textMm / 2),
  }
}
