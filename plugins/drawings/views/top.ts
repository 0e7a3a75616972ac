import type {Plan} from '../../plan/plan.ts'
import {boxFront} from '../instrument/box.ts'
import {handOf} from '../instrument/hand.ts'
import {anchorsFront, nutAndBridge, tunersFront} from '../instrument/hardware.ts'
import {linesFront, neckFront, neckWidth} from '../instrument/neck.ts'
import {stringsFront} from '../instrument/strings.ts'
import {centreLine, lanes, running} from '../kit/dimensions.ts'
import {extent, isClear, textBox} from '../kit/extent.ts'
import {notesColumn} from '../kit/notes.ts'
import {type Shape, type Text, transpose} from '../kit/shapes.ts'
import {figureOf} from '../words.ts'
import {spansAcross, spansAlong, topNotes} from './top-measures.ts'

/** Draw the instrument from the front with what is measured along and across it, for text so many mm high. */
export function composeTop(plan: Plan, textMm: number): Shape[] {
  const drawn = front(plan)
  if (!drawn.length) return []
  const {x, y, width, height} = extent(drawn)
  const [right, bottom] = [x + width, y + height]
  const notes = topNotes(plan, (halfWidthMm) => -halfWidthMm - 0.35 * textMm)
  const runningX = x - 1.2 * textMm
  const left = [
    ...running(
      notes.map(({at}) => at[1]),
      0,
      runningX,
      textMm,
    ),
    ...notesColumn(notes, {base: runningX - 0.5 * textMm, out: -1, textMm, range: [y, bottom]}),
  ]
  const along = lanes(spansAlong(plan), right + 0.4 * textMm, 1, textMm)
  const below = extent([...drawn, ...left, ...along])
  const across = transpose(lanes(spansAcross(plan), below.y + below.height + 0.5 * textMm, 1, textMm))
  const above = nutWidth(plan, Math.min(y, below.y), textMm)
  const laid = [centreLine(y, bottom, textMm), ...drawn, ...left, ...along, ...across, ...above]
  return [...laid, ...lineNumbers(plan, laid, textMm)]
}

/** The neck's width at the nut, above the head. */
function nutWidth(plan: Plan, top: number, textMm: number): Shape[] {
  const {neck, head} = plan.outline ?? {}
  if (!neck) return []
  const edge = head ? -head.lengthMm : 0
  const half = neck.nutWidthMm / 2
  const figure = figureOf(neck.nutWidthMm, plan)
  return transpose(
    lanes([{from: -half, to: half, fromEdge: edge, toEdge: edge, figure}], top - 0.3 * textMm, -1, textMm),
  )
}

/** Number the lines that carry dots (or else the octaves) beside the neck, octaves first, where nothing is in the way. */
function lineNumbers({scale, outline}: Plan, laid: readonly Shape[], textMm: number): Text[] {
  const neck = outline?.neck
  if (!neck) return []
  const lines = scale?.lines ?? []
  const dotted = new Set((scale?.dots ?? []).map(({label}) => label))
  const octaves = lines.filter(({semitones}) => Math.abs(semitones % 12) < 0.01)
  const wanted = [...octaves, ...lines.filter((line) => dotted.has(line.label) && !octaves.includes(line))]
  const placed: Text[] = []
  for (const {label, fromNutMm} of wanted) {
    const text: Text = {
      is: 'text',
      ink: 'name',
      at: [neckWidth(neck, fromNutMm) / 2 + 0.4 * textMm, fromNutMm],
      text: label,
      sizeMm: 0.72 * textMm,
      anchor: 'start',
    }
    if (isClear(textBox(text), [...laid, ...placed])) placed.push(text)
  }
  return placed
}

/** Draw the instrument from the front, hanging from its nut line at 0: mm across and down; nothing without a neck. */
export function front(plan: Plan): Shape[] {
  if (!plan.outline?.neck) return []
  const hand = handOf(plan)
  return [
    ...boxFront(plan, hand),
    ...neckFront(plan),
    ...linesFront(plan, hand),
    ...nutAndBridge(plan),
    ...tunersFront(plan, hand),
    ...anchorsFront(plan, hand),
    ...stringsFront(plan, hand),
  ]
}
