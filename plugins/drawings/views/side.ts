import type {Plan} from '../../plan/shape/plan.ts'
import {placedBox} from '../instrument/placed-box.ts'
import {side} from '../instrument/side.ts'
import {extent} from '../kit/extent.ts'
import {lanes} from '../kit/lanes.ts'
import {notesColumn} from '../kit/notes.ts'
import type {Shape} from '../kit/shape.ts'
import {transpose} from '../kit/transpose.ts'
import {figureOf} from '../words.ts'
import {backNotes, stringNotes} from './side-notes.ts'

/** Draw the instrument from the side with its heights and angles, for text so many mm high. */
export function composeSide(plan: Plan, textMm: number): Shape[] {
  const drawn = side(plan)
  if (!drawn.length) return []
  const {x, y, width, height} = extent(drawn)
  const range = [y, y + height] as const
  const left = notesColumn(stringNotes(plan), {base: x - 0.8 * textMm, out: -1, textMm, range})
  const right = notesColumn(backNotes(plan), {base: x + width + 0.8 * textMm, out: 1, textMm, range})
  const below = extent([...drawn, ...left, ...right])
  return [...drawn, ...left, ...right, ...boxDepth(plan, below.y + below.height, textMm)]
}

function boxDepth(plan: Plan, bottom: number, textMm: number): Shape[] {
  const neck = plan.outline?.neck
  const box = placedBox(plan)
  if (!box || !neck || neck.tiltDeg !== 0) return []
  const from = neck.aboveTopMm ?? 0
  const edge = box.tailMm
  const figure = figureOf(box.depthMm, plan)
  return transpose(
    lanes([{from, to: from + box.depthMm, fromEdge: edge, toEdge: edge, figure}], bottom, 1, textMm),
  )
}
