import PdfDocument from 'pdfkit'
import {describe, expect, test} from 'vitest'
import {clipCircle} from '../../plugins/drawings/instrument/cross-section.ts'
import {lanes, type Span, transpose} from '../../plugins/drawings/kit/dimensions.ts'
import {extent, overlaps, textBox, textWidthMm} from '../../plugins/drawings/kit/extent.ts'
import {spread} from '../../plugins/drawings/kit/notes.ts'
import {arc, circle, type Point, type Text} from '../../plugins/drawings/kit/shapes.ts'
import fc from '../support/properties.ts'

describe('the width of a text', () => {
  const doc = new PdfDocument({autoFirstPage: false})
  const words = [
    '24 1/4',
    '−10 15/16',
    'box, head side',
    'Ø 1 1/8',
    '6.9 to 10.9°',
    'scarf face',
    'block 4 1/2 × 1 1/4',
    'WIM mw',
    'illicit',
    'ABCDEFGHIJKLMNOPQRSTUVWXYZ',
    'abcdefghijklmnopqrstuvwxyz',
  ]

  // Adobe's font metrics of Helvetica and Helvetica Bold, as pdfkit holds them.
  test.each(['Helvetica', 'Helvetica-Bold'])('is never less than in %s', (font) => {
    doc.font(font).fontSize(10)
    for (const word of words)
      expect(textWidthMm(word, 10), word).toBeGreaterThanOrEqual(doc.widthOfString(word.replace('−', '-')))
  })
})

describe('spreading labels', () => {
  const wishes = fc
    .array(fc.record({target: fc.integer({min: -100, max: 100}), size: fc.integer({min: 1, max: 30})}), {
      minLength: 1,
      maxLength: 12,
    })
    .map((list) => list.sort((a, b) => a.target - b.target))

  test('leaves neighbours clear of each other, in order', () => {
    fc.assert(
      fc.property(wishes, (list) => {
        const middles = spread(list)
        for (let i = 1; i < list.length; i++)
          expect(middles[i]! - middles[i - 1]!).toBeGreaterThanOrEqual(
            (list[i]!.size + list[i - 1]!.size) / 2 - 1e-9,
          )
      }),
    )
  })

  test('leaves alone what does not touch', () => {
    expect(
      spread([
        {target: 0, size: 4},
        {target: 10, size: 4},
      ]),
    ).toEqual([0, 10])
  })

  test('keeps within a range that has room', () => {
    fc.assert(
      fc.property(wishes, (list) => {
        const total = list.reduce((sum, {size}) => sum + size, 0)
        const range = [-total, total] as const
        const middles = spread(list, range)
        middles.forEach((middle, i) => {
          expect(middle - list[i]!.size / 2).toBeGreaterThanOrEqual(range[0] - 1e-9)
          expect(middle + list[i]!.size / 2).toBeLessThanOrEqual(range[1] + 1e-9)
        })
      }),
    )
  })

  test('is nearest in the least squares: no small change of one does better', () => {
    fc.assert(
      fc.property(wishes, fc.nat(), fc.constantFrom(-0.01, 0.01), (list, pick, step) => {
        const middles = spread(list)
        const cost = (at: readonly number[]) => at.reduce((sum, y, i) => sum + (y - list[i]!.target) ** 2, 0)
        const moved = middles.map((y, i) => (i === pick % list.length ? y + step : y))
        const allowed = moved.every(
          (y, i) => i === 0 || y - moved[i - 1]! >= (list[i]!.size + list[i - 1]!.size) / 2,
        )
        expect(!allowed || cost(moved) >= cost(middles) - 1e-6).toBe(true)
      }),
    )
  })
})

describe('dimensions in lanes', () => {
  const span = fc.tuple(fc.integer({min: 0, max: 300}), fc.integer({min: 1, max: 300})).map(
    ([from, length]): Span => ({
      from,
      to: from + length,
      fromEdge: 0,
      toEdge: 0,
      figure: `${length} 15/16`,
    }),
  )

  test('never put a figure on another, nor on an extension line', () => {
    fc.assert(
      fc.property(fc.array(span, {minLength: 1, maxLength: 7}), (spans) => {
        const shapes = lanes(spans, 10, 1, 5)
        const boxes = shapes.filter((shape): shape is Text => shape.is === 'text').map(textBox)
        boxes.forEach((box, i) => {
          expect(boxes.slice(i + 1).some((other) => overlaps(box, other))).toBe(false)
        })
      }),
    )
  })
})

describe('extents', () => {
  test('hold an arc, and no more of its circle than it draws', () => {
    expect(extent([arc('edge', [0, 0], 10, [0, 90])])).toEqual(
      expect.objectContaining({
        x: expect.closeTo(0, 9),
        y: expect.closeTo(0, 9),
        width: expect.closeTo(10, 9),
        height: expect.closeTo(10, 9),
      }),
    )
    expect(extent([circle('edge', [5, 5], 2)])).toEqual({x: 3, y: 3, width: 4, height: 4})
  })
})

describe('a circle cut by an outline', () => {
  const square: Point[] = [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ]

  test('is a quarter at a corner, and the quarter within', () => {
    const pieces = clipCircle('edge', [0, 0], 5, square)
    expect(pieces).toHaveLength(1)
    expect(pieces[0]!.toDeg - pieces[0]!.fromDeg).toBeCloseTo(90, 6)
  })
})

describe('transposing', () => {
  test('twice gives what was there', () => {
    const shapes = [arc('edge', [3, 4], 2, [10, 80]), circle('edge', [1, 2], 1)]
    expect(transpose(transpose(shapes))).toEqual(shapes)
  })
})
