import type {Plan} from '../../plan/shape/plan.ts'
import {boxInside, insideHand, topHoles} from '../instrument/box-inside.ts'
import {type PlacedBox, placedBox} from '../instrument/placed-box.ts'
import {centreLine} from '../kit/centre-line.ts'
import {extent} from '../kit/extent.ts'
import {lanes, type Span} from '../kit/lanes.ts'
import {notesColumn} from '../kit/notes.ts'
import {running} from '../kit/running.ts'
import type {Shape, Text} from '../kit/shape.ts'
import {transpose} from '../kit/transpose.ts'
import {figureOf} from '../words.ts'
import {bassAndTreble} from './bass-and-treble.ts'
import {insideNotes} from './inside-notes.ts'
import {offSpans} from './off-spans.ts'

/** Draw the box's top from inside, with what is glued and drilled there, measured from the box's head-side edge. */
export function composeInside(plan: Plan, textMm: number): Shape[] {
  const box = placedBox(plan)
  if (!box) return []
  const drawn = boxInside(plan)
  const {x, y, width, height} = extent(drawn)
  const notes = insideNotes(plan)
  const runningX = x - 1.2 * textMm
  const left = [
    ...running(
      notes.flatMap(({at, figure}) => (figure ? [at[1]] : [])),
      box.atMm,
      runningX,
      textMm,
    ),
    ...notesColumn(notes, {base: runningX - 0.5 * textMm, out: -1, textMm, range: [y, y + height]}),
  ]
  const right = lanes(
    [span(box.atMm, box.tailMm, box.widthMm / 2, figureOf(box.tailMm - box.atMm, plan))],
    x + width + 0.2 * textMm,
    1,
    textMm,
  )
  const reach = extent([...drawn, ...left, ...right])
  const below = transpose(lanes(across(plan, box), reach.y + reach.height + 0.5 * textMm, 1, textMm))
  return [
    centreLine(y, y + height, textMm),
    ...drawn,
    ...left,
    ...right,
    ...below,
    ...words(plan, box, Math.min(y, reach.y), textMm),
  ]
}

const span = (from: number, to: number, edge: number, figure: string): Span => ({
  from,
  to,
  fromEdge: edge,
  toEdge: edge,
  figure,
})

/** The box's width, and how far holes stand off the centre line. */
function across(plan: Plan, {widthMm, tailMm}: PlacedBox): Span[] {
  const holes = [...(plan.box?.soundHoles ?? []), ...topHoles(plan)]
  return [
    ...offSpans(holes, insideHand(plan), plan, tailMm, 4),
    span(-widthMm / 2, widthMm / 2, tailMm, figureOf(widthMm, plan)),
  ]
}

/** Say which side is which, and that it is the inside. */
function words(plan: Plan, {widthMm}: PlacedBox, top: number, textMm: number): Text[] {
  return [
    ...bassAndTreble(insideHand(plan), widthMm / 2, top - 0.9 * textMm, 0.84 * textMm),
    {
      is: 'text',
      ink: 'figure',
      at: [0, top - 2.2 * textMm],
      text: 'seen from inside',
      sizeMm: textMm,
      anchor: 'middle',
    },
  ]
}
