import type {Plan} from '../../plan/plan.ts'
import {type PlacedBox, placedBox} from '../instrument/box.ts'
import {boxInside, insideHand, topHoles} from '../instrument/box-inside.ts'
import {centreLine, lanes, running, type Span} from '../kit/dimensions.ts'
import {extent} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {type Shape, type Text, transpose} from '../kit/shapes.ts'
import {diameterOf, figureOf} from '../words.ts'
import {bassAndTreble, offSpans} from './view.ts'

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

interface Row {
  name: string
  stationMm: number
  left: number
  count: number
}

const mostRows = 12

/** Name what is glued and drilled inside, a row at a time, with its distance from the box's head-side edge. */
function insideNotes(plan: Plan): Note[] {
  const box = placedBox(plan)
  if (!box) return []
  const hand = insideHand(plan)
  const rows = new Map<string, Row>()
  const add = (name: string, stationMm: number, left: number) => {
    const key = `${name} ${stationMm.toFixed(2)}`
    const row = rows.get(key) ?? {name, stationMm, left, count: 0}
    rows.set(key, {...row, left: Math.min(left, row.left), count: row.count + 1})
  }
  for (const {stationMm, offMm, widthMm, lengthMm} of plan.box?.blocks ?? []) {
    const size = `${figureOf(widthMm, plan)} × ${figureOf(lengthMm, plan)}`
    add(`block ${size}`, stationMm, hand.x(offMm) - widthMm / 2)
  }
  for (const {stationMm, offMm, diameterMm} of topHoles(plan))
    add(diameterOf(diameterMm, plan), stationMm, hand.x(offMm) - diameterMm / 2)
  for (const {stationMm, offMm, diameterMm} of plan.box?.soundHoles ?? [])
    add(diameterOf(diameterMm, plan), stationMm, hand.x(offMm) - diameterMm / 2)
  const {bridge, outline} = plan
  if (bridge && bridge.stationMm > box.atMm && bridge.stationMm < box.tailMm)
    add('bridge line', bridge.stationMm, -(outline?.bridge?.lengthMm ?? 0) / 2)
  const sorted = [...rows.values()].sort((a, b) => a.stationMm - b.stationMm)
  return [
    {at: [-box.widthMm / 2, box.atMm], name: 'box, head side'},
    ...sorted.slice(0, mostRows).map(
      ({name, stationMm, left, count}): Note => ({
        at: [left, stationMm],
        name: count > 1 ? `${count} × ${name}` : name,
        figure: figureOf(stationMm - box.atMm, plan),
      }),
    ),
  ]
}
