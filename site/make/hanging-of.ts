import type {Element} from 'hast'
import {cardDrawing} from '../../plugins/drawings/views/card.ts'
import type {Plan} from '../../plugins/plan/shape/plan.ts'
import {markup} from '../html/markup.ts'
import type {Hanging} from '../site-data.ts'

/** Heavier lines than a drawing to work from, in mm at the instrument's own size; thin ones vanish at this scale. */
const strokeMm: Readonly<Record<string, number>> = {outline: 4, edge: 2.5, nut: 2.5, string: 1.6}

/** Take the portfolio's drawing apart, so that a row can hang it and a card can lay it on its side. */
export function hangingOf(plan: Plan): Hanging | undefined {
  const drawing = cardDrawing(plan)
  if (!drawing) return undefined
  const {svg, widthMm, heightMm, nutYMm, centreXMm} = drawing
  const shapes = svg.children.filter(
    (child) => child.type === 'element' && child.tagName === 'g',
  ) as Element[]
  for (const {properties} of shapes) {
    const [ink] = properties.className as string[]
    const width = strokeMm[ink?.replace('ink-', '') ?? '']
    if (width !== undefined) properties.strokeWidth = String(width)
  }
  return {shapes: markup(shapes, 'svg'), frame: {x: -centreXMm, y: -nutYMm, width: widthMm, height: heightMm}}
}
