import {describe, expect, test} from 'vitest'
import {readBuild} from '../../plugins/build-file/read.ts'
import {draw, viewNames} from '../../plugins/drawings/draw.ts'
import {extent, isClear, overlaps, textBox} from '../../plugins/drawings/kit/extent.ts'
import {type Drawing, path, type Rect, type Text} from '../../plugins/drawings/kit/shapes.ts'
import {planInstrument} from '../../plugins/plan/instrument.ts'
import {settle} from '../../plugins/plan/settle.ts'
import {changed} from '../support/changed.ts'
import fc from '../support/properties.ts'
import {soundBuilds} from '../support/sound-builds.ts'
import {templateBuilds} from './support/builds.ts'
import {randomBuild} from './support/random-build.ts'

const textsOf = ({shapes}: Drawing) => shapes.filter((shape): shape is Text => shape.is === 'text')

/** A box less what a careful draftsman would not miss: a fiftieth of the text's height on each side. */
const less = ({x, y, width, height}: Rect, by: number): Rect => ({
  x: x + by,
  y: y + by,
  width: width - 2 * by,
  height: height - 2 * by,
})

// Without the making and the checks, of which nothing is drawn here.
const planOf = (frontMatter: string) =>
  planInstrument(settle(readBuild(`---\n${frontMatter}\n---\n`, {slug: 'chance', journal: {}}).build), {
    journal: {},
    pieces: [],
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
        const plan = planOf(frontMatter)
        const drawings = draw(plan, viewNames)
        expect(drawings.map(({name}) => name)).toEqual(viewNames)
        expect(drawings.flatMap(faultsOf)).toEqual([])
      }),
      {numRuns: 500, seed: 20260307},
    )
  })
})

// In mm: an upper face 1/4 + 1/8 + gap inches under the playing face.
test.each(['1/32', '3/16', '1/2', '3/4'])(
  'a neck cut down for %s of daylight is shown inside its box, under its top',
  (gap) => {
    const plan = planOf(changed(soundBuilds.through, {'box.neck-gap': gap}))
    const [shown] = draw(plan, ['section-inside'])
    expect(faultsOf(shown!)).toEqual([])
    expect(textsOf(shown!).map(({text}) => text)).toContain(gap)
    const heights = shown!.shapes.filter(({ink}) => ink === 'outline').map((one) => extent([one]))
    const [over, daylight] = [Math.min(...heights.map(({y}) => y)), plan.box!.neck!.gapMm!]
    expect(over).toBeCloseTo(-daylight - 25.4 / 8, 6)
  },
)

test('a neck that stays outside its box has no section inside it', () => {
  expect(draw(planOf(soundBuilds['on top']), ['section-inside'])).toEqual([])
})

describe('the check of those figures itself', () => {
  const drawing = (shapes: Drawing['shapes']): Drawing => ({
    name: 'a',
    title: '',
    says: '',
    textMm: 3,
    shapes,
    frame: {x: 0, y: 0, width: 50, height: 50},
  })
  const word = (x: number): Text => ({
    is: 'text',
    ink: 'figure',
    at: [x, 10],
    text: '24 1/4',
    sizeMm: 3,
    anchor: 'start',
  })

  test('finds figures that touch, lines through a figure, and what lies outside', () => {
    expect(faultsOf(drawing([word(5), word(30)]))).toEqual([])
    expect(faultsOf(drawing([word(5), word(12)]))).toEqual(['a: 24 1/4 on 24 1/4'])
    expect(faultsOf(drawing([word(5), path('edge', [0, 0], [14, 20])]))).toEqual(['a: a line through 24 1/4'])
    expect(faultsOf(drawing([word(45)]))).toEqual(['a: outside its frame'])
  })
})

describe('top and side asked for together', () => {
  const [top, side] = draw(planOf(templateBuilds.fretless), ['top', 'side']) as [Drawing, Drawing]

  test('have one scale and lie level', () => {
    expect(side.textMm).toBe(top.textMm)
    expect(side.frame.y).toBe(top.frame.y)
    expect(side.frame.height).toBe(top.frame.height)
  })

  test('say in words what they show', () => {
    expect(top.says).toContain('scale length 24 1/4 in')
    expect(top.says).toContain('33 1/2 in overall')
    expect(side.says).toContain('leaning back 14°')
  })

  test('word their figures as the page does', () => {
    const figures = textsOf(top).map(({text}) => text)
    // Head, scale, overall, box to bridge and bridge to tail of the file's own numbers.
    expect(figures).toEqual(expect.arrayContaining(['6 1/4', '24 1/4', '33 1/2', '8 1/4', '1 7/8', '7']))
  })
})

describe('a left-handed build', () => {
  const holes = (frontMatter: string) =>
    draw(planOf(frontMatter), ['top'])[0]!.shapes.flatMap((shape) =>
      shape.is === 'circle' && shape.ink === 'outline'
        ? [[shape.centre[0], shape.centre[1], shape.radiusMm]]
        : [],
    )

  test('is the mirror image of the right-handed one', () => {
    const mirrored = holes(templateBuilds.fretless).map(([x, ...rest]) => [-x!, ...rest])
    expect(holes(templateBuilds['left-handed'])).toEqual(mirrored)
    expect(mirrored.length).toBe(2)
  })
})
