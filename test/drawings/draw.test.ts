import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {draw, viewNames} from '../../plugins/drawings/draw.ts'
import {isClear, overlaps} from '../../plugins/drawings/kit/clear.ts'
import {extent} from '../../plugins/drawings/kit/extent.ts'
import type {Drawing, Rect, Text} from '../../plugins/drawings/kit/shape.ts'
import {textBox} from '../../plugins/drawings/kit/text-box.ts'
import {planOf} from '../support/plan-of.ts'
import {randomBuild} from './support/random-build.ts'

const textsOf = ({shapes}: Drawing) => shapes.filter((shape): shape is Text => shape.is === 'text')

/** A box less what a careful draftsman would not miss: a fiftieth of the text's height on each side. */
const less = ({x, y, width, height}: Rect, by: number): Rect => ({
  x: x + by,
  y: y + by,
  width: width - 2 * by,
  height: height - 2 * by,
})

function faultsOf(drawing: Drawing): string[] {
  const texts = textsOf(drawing)
  const slack = drawing.textMm / 50
  const boxes = texts.map((text) => less(textBox(text), slack))
  const lines = drawing.shapes.filter(({is}) => is !== 'text')
  const all = extent(drawing.shapes)
  const {frame} = drawing
  const faults: string[] = []
  boxes.forEach((box, i) => {
    for (let k = i + 1; k < boxes.length; k++)
      if (overlaps(box, boxes[k]!)) faults.push(`${drawing.name}: ${texts[i]!.text} on ${texts[k]!.text}`)
    if (!isClear(box, lines)) faults.push(`${drawing.name}: a line through ${texts[i]!.text}`)
  })
  if (
    all.x < frame.x ||
    all.y < frame.y ||
    all.x + all.width > frame.x + frame.width ||
    all.y + all.height > frame.y + frame.height
  )
    faults.push(`${drawing.name}: outside its frame`)
  if (!drawing.shapes.every((shape) => Object.values(extent([shape])).every(Number.isFinite)))
    faults.push(`${drawing.name}: a place that is no number`)
  return faults
}

describe('every drawing of 500 builds of chance', () => {
  test('has no figure on another or on a line, and nothing outside its frame', () => {
    fc.assert(
      fc.property(randomBuild, (frontMatter) => {
        const {plan} = planOf(frontMatter)
        const drawings = draw(plan, viewNames)
        expect(drawings.map(({name}) => name)).toEqual(viewNames)
        expect(drawings.flatMap(faultsOf)).toEqual([])
      }),
      {numRuns: 500, seed: 20260307},
    )
  })
})
