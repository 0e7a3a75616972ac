import type {Plan} from '../../plan/shape/plan.ts'
import {topHoles} from '../instrument/box-inside.ts'
import {handOf} from '../instrument/hand.ts'
import {isClear} from '../kit/clear.ts'
import type {Point, Shape, Text} from '../kit/shape.ts'
import {textBox} from '../kit/text-box.ts'
import {diameterOf} from '../words.ts'
import {templateTextMm as textMm} from './template.ts'

/** Write each hole's diameter beside it, at its right, left, above or below, where nothing is in the way. */
export function holeNames(plan: Plan, laid: readonly Shape[]): Text[] {
  const hand = handOf(plan)
  const placed: Text[] = []
  for (const {stationMm: y, offMm, diameterMm} of [...(plan.box?.soundHoles ?? []), ...topHoles(plan)]) {
    const x = hand.x(offMm)
    const clearMm = Math.max(diameterMm / 2, 2.2) + 0.6
    const name = (at: Point, anchor: Text['anchor']): Text => ({
      is: 'text',
      ink: 'name',
      at,
      text: diameterOf(diameterMm, plan),
      sizeMm: textMm,
      anchor,
    })
    const best = [
      name([x + clearMm, y], 'start'),
      name([x - clearMm, y], 'end'),
      name([x, y - clearMm - 0.6 * textMm], 'middle'),
      name([x, y + clearMm + 0.6 * textMm], 'middle'),
    ].find((text) => isClear(textBox(text), [...laid, ...placed]))
    if (best) placed.push(best)
  }
  return placed
}
