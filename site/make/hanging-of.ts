import {cardDrawing} from '../../plugins/drawings/views/card.ts'
import type {Plan} from '../../plugins/plan/shape/plan.ts'
import {markup} from '../html/markup.ts'
import type {Hanging} from '../site-data.ts'

/** Take the portfolio's drawing apart, so that a row can hang it and a card can lay it on its side. */
export function hangingOf(plan: Plan): Hanging | undefined {
  const drawing = cardDrawing(plan)
  if (!drawing) return undefined
  const {svg, widthMm, heightMm, nutYMm, centreXMm} = drawing
  const shapes = svg.children.filter((child) => child.type === 'element' && child.tagName === 'g')
  return {shapes: markup(shapes), frame: {x: -centreXMm, y: -nutYMm, width: widthMm, height: heightMm}}
}
