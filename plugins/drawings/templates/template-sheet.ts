import type {Plan} from '../../plan/shape/plan.ts'
import {move} from '../kit/move.ts'
import type {Shape, Text} from '../kit/shape.ts'
import type {Sheet} from '../kit/sheet.ts'
import {bothBars} from './bars.ts'
import {templates} from './templates.ts'

const gapMm = 15

/**
 * Lay every template of a build side by side on one sheet as large as they need, in mm, with the bars to check a
 * machine by, the build's name, its file and its day; nothing where there is no template.
 */
export function templateSheet(
  plan: Plan,
  {file, day}: {file: string; day?: string | undefined},
): Sheet | undefined {
  const all = templates(plan)
  if (all.length === 0) return undefined
  const tallest = Math.max(...all.map(({frame}) => frame.height))
  const shapes: Shape[] = []
  let x = gapMm
  for (const {shapes: drawn, frame} of all) {
    shapes.push(...move(drawn, x - frame.x, gapMm + 10 - frame.y))
    x += frame.width + gapMm
  }
  const footY = gapMm + 10 + tallest + gapMm
  shapes.push(
    words(gapMm, gapMm, [plan.title ?? plan.slug, file, ...(day ? [day] : [])].join(', ')),
    ...bothBars([gapMm, footY]),
  )
  return {
    widthMm: Math.max(x, gapMm * 2 + 125),
    heightMm: footY + 6.5 + gapMm,
    content: [{shapes}],
  }
}

const words = (x: number, y: number, text: string): Text => ({
  is: 'text',
  ink: 'figure',
  at: [x, y],
  text,
  sizeMm: 4.2,
  anchor: 'start',
})
