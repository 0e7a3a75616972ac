import type {Plan} from '../../plan/plan.ts'
import {type PlacedBox, placedBox} from '../instrument/box.ts'
import {topHoles} from '../instrument/box-inside.ts'
import {handOf} from '../instrument/hand.ts'
import {neckWidth} from '../instrument/neck.ts'
import {extent, isClear, textBox} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {type Point, path, box as rectangle, type Shape, type Text} from '../kit/shapes.ts'
import {bassAndTreble} from '../views/view.ts'
import {diameterOf, lengthWords} from '../words.ts'
import {cutHole, drilledHole, type Template, templateTextMm as textMm} from './marks.ts'

/**
 * Draw the box's top from outside at full size: its edges, centre lines, bridge line and foot, the neck's edges, sound
 * holes, screws, and blocks beneath. Mm from the nut line down, the head side up; figures from the head-side edge.
 */
export function boxTemplate(plan: Plan): Template | undefined {
  const box = placedBox(plan)
  if (!box) return undefined
  const hand = handOf(plan)
  const half = box.widthMm / 2
  const at = ({stationMm, offMm}: {stationMm: number; offMm: number}): Point => [hand.x(offMm), stationMm]
  const middle = (box.atMm + box.tailMm) / 2
  const shapes: Shape[] = [
    path('centre', [0, box.atMm - 4], [0, box.tailMm + 4]),
    path('centre', [-half - 4, middle], [half + 4, middle]),
    rectangle('cut', [-half, box.atMm], [half, box.tailMm]),
    ...neckEdges(plan, box),
    ...bridgeLines(plan, half),
    ...(plan.box?.blocks ?? []).map(({stationMm, offMm, widthMm, lengthMm}) => {
      const [x, y] = at({stationMm, offMm})
      return rectangle('hidden', [x - widthMm / 2, y - lengthMm / 2], [x + widthMm / 2, y + lengthMm / 2])
    }),
    ...(plan.box?.soundHoles ?? []).flatMap((hole) => cutHole(at(hole), hole.diameterMm)),
    ...topHoles(plan).flatMap((hole) => drilledHole(at(hole), hole.diameterMm)),
  ]
  shapes.push(
    ...notesColumn(boxNotes(plan, box), {base: -half - 3, out: -1, textMm}),
    ...bassAndTreble(hand, half - 2, box.tailMm + 3, textMm),
  )
  shapes.push(...holeNames(plan, shapes))
  return {name: 'box top', shapes, frame: extent(shapes, 2)}
}

function neckEdges({outline}: Plan, box: PlacedBox): Shape[] {
  const neck = outline?.neck
  if (!neck || neck.joins === 'end') return []
  const toMm = Math.min(neck.tailMm, box.tailMm)
  if (toMm <= box.atMm) return []
  const half = (stationMm: number) => neckWidth(neck, stationMm) / 2
  const ink = neck.joins === 'through' ? 'hidden' : 'pencil'
  return [-1, 1].map((side) => path(ink, [side * half(box.atMm), box.atMm], [side * half(toMm), toMm]))
}

function bridgeLines({bridge, outline}: Plan, half: number): Shape[] {
  if (!bridge) return []
  const {stationMm: y, on} = bridge
  const {lengthMm = 0, footMm = 0} = outline?.bridge ?? {}
  const foot =
    on === 'top' && footMm > 0
      ? [rectangle('pencil', [-lengthMm / 2, y - footMm / 2], [lengthMm / 2, y + footMm / 2])]
      : []
  return [path('pencil', [-half, y], [half, y]), ...foot]
}

/** Each row of holes, the bridge line and the blocks, measured from the head-side edge; nothing leads over the wood. */
function boxNotes(plan: Plan, box: PlacedBox): Note[] {
  const edge = -box.widthMm / 2 - 0.8
  const rows = new Map<string, Note>()
  const add = (name: string, stationMm: number) => {
    const words = `${name}: ${lengthWords(stationMm - box.atMm, plan)}`
    rows.set(words, {at: [edge, stationMm], name: words})
  }
  if (plan.bridge) add('bridge line', plan.bridge.stationMm)
  for (const {stationMm} of plan.box?.blocks ?? []) add('block beneath', stationMm)
  for (const {stationMm} of plan.box?.soundHoles ?? []) add('sound hole', stationMm)
  for (const {stationMm} of topHoles(plan)) add('hole', stationMm)
  return [{at: [edge, box.atMm], name: 'box, head side'}, ...rows.values()]
}

/** Write each hole's diameter beside it, at its right, left, above or below, where nothing is in the way. */
function holeNames(plan: Plan, laid: readonly Shape[]): Text[] {
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
