import {diameterOf, inBrackets, placeNames} from '../../words/drawings/labels.ts'
import {boxNames, placeFrom, templateNames} from '../../words/drawings/templates.ts'
import {blocks} from '../instrument/box.ts'
import {bridgeFront} from '../instrument/hardware.ts'
import {type Instrument, placed} from '../instrument/instrument.ts'
import {extent, isClear, textBox} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {across, label, path, rectangle, type Shape, type Text} from '../kit/shapes.ts'
import {bassAndTreble} from '../views/view.ts'
import {cutHole, drilledHole, type Template, templateTextMm as textMm} from './marks.ts'

/**
 * Draw the box's top from outside at full size: its edges, centre lines, bridge line and foot, the neck's edges, sound
 * holes, screws, and blocks beneath. Mm from the nut line down, the head side up; figures from the head-side edge.
 */
export function boxTemplate(instrument: Instrument): Template | undefined {
  const {plan, box, topHoles} = instrument
  if (!box) return undefined
  const half = box.widthMm / 2
  const middle = (box.atMm + box.tailMm) / 2
  const soundHoles = plan.box?.soundHoles ?? []
  const drawn: Shape[] = [
    path('centre', [0, box.atMm - 4], [0, box.tailMm + 4]),
    across('centre', half + 4, middle),
    rectangle('cut', [-half, box.atMm], [half, box.tailMm]),
    ...neckEdges(instrument),
    ...bridgeLines(instrument),
    ...blocks(instrument, 'hidden'),
    ...soundHoles.flatMap((hole) => cutHole(placed(instrument, hole), hole.diameterMm)),
    ...topHoles.flatMap((hole) => drilledHole(placed(instrument, hole), hole.diameterMm)),
    ...notesColumn(notes(instrument), {base: -half - 3, out: -1, textMm}),
    ...bassAndTreble(instrument, half - 2, box.tailMm + 3, textMm),
  ]
  const shapes = [...drawn, ...diameters(instrument, drawn)]
  return {name: templateNames.box, shapes, frame: extent(shapes, 2)}
}

function neckEdges({neck, box, halfMm}: Instrument): Shape[] {
  if (!neck || !box || neck.joins === 'end') return []
  const toMm = Math.min(neck.tailMm, box.tailMm)
  if (toMm <= box.atMm) return []
  const ink = neck.joins === 'through' ? 'hidden' : 'pencil'
  return [-1, 1].map((side) => path(ink, [side * halfMm(box.atMm), box.atMm], [side * halfMm(toMm), toMm]))
}

function bridgeLines(instrument: Instrument): Shape[] {
  const {box, plan} = instrument
  const {bridge, outline} = plan
  if (!bridge || !box) return []
  const hasFoot = bridge.on === 'top' && (outline?.bridge?.footMm ?? 0) > 0
  return [
    across('pencil', box.widthMm / 2, bridge.stationMm),
    ...(hasFoot ? bridgeFront(instrument, 'pencil') : []),
  ]
}

/** Each row of holes, the bridge line and the blocks, measured from the head-side edge; nothing leads over the wood. */
function notes({plan, box, topHoles}: Instrument): Note[] {
  if (!box) return []
  const edge = -box.widthMm / 2 - 0.8
  const rows = new Map<string, Note>()
  const add = (name: string, places: readonly {stationMm: number; proposed?: true | undefined}[]) => {
    for (const {stationMm, proposed} of places) {
      const words = inBrackets(placeFrom(name, stationMm - box.atMm, plan), proposed)
      rows.set(words, {at: [edge, stationMm], name: words})
    }
  }
  if (plan.bridge) add(placeNames.bridge, [plan.bridge])
  add(boxNames.block, plan.box?.blocks ?? [])
  add(boxNames.soundHole, plan.box?.soundHoles ?? [])
  add(boxNames.hole, topHoles)
  return [{at: [edge, box.atMm], name: placeNames.boxHead}, ...rows.values()]
}

/** Write each hole's diameter beside it, at its right, left, above or below, where nothing is in the way. */
function diameters(instrument: Instrument, laid: readonly Shape[]): Text[] {
  const {plan, topHoles} = instrument
  const texts: Text[] = []
  for (const hole of [...(plan.box?.soundHoles ?? []), ...topHoles]) {
    const [x, y] = placed(instrument, hole)
    const clearMm = Math.max(hole.diameterMm / 2, 2.2) + 0.6
    const levelMm = clearMm + 0.6 * textMm
    const words = diameterOf(hole.diameterMm, plan)
    const best = [
      label(words, [x + clearMm, y], textMm, {ink: 'name', anchor: 'start'}),
      label(words, [x - clearMm, y], textMm, {ink: 'name', anchor: 'end'}),
      label(words, [x, y - levelMm], textMm, {ink: 'name', anchor: 'middle'}),
      label(words, [x, y + levelMm], textMm, {ink: 'name', anchor: 'middle'}),
    ].find((text) => isClear(textBox(text), [...laid, ...texts]))
    if (best) texts.push(best)
  }
  return texts
}
