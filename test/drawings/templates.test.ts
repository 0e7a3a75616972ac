import {describe, expect, test} from 'vitest'
import {readBuild} from '../../plugins/build-file/read.ts'
import {extent, overlaps, textBox} from '../../plugins/drawings/kit/extent.ts'
import type {Text} from '../../plugins/drawings/kit/shapes.ts'
import {bothBars} from '../../plugins/drawings/templates/marks.ts'
import {templates} from '../../plugins/drawings/templates/sheets.ts'
import {overlapMm, tile} from '../../plugins/drawings/templates/tiles.ts'
import {plainLatin} from '../../plugins/drawings/writers/plain-latin.ts'
import {planInstrument} from '../../plugins/plan/instrument.ts'
import {settle} from '../../plugins/plan/settle.ts'
import fc from '../support/properties.ts'
import {randomBuild} from './support/random-build.ts'

describe('tiles', () => {
  const size = fc.integer({min: 50, max: 1500})

  test('cover their frame, each repeating a strip of the one before', () => {
    fc.assert(
      fc.property(size, size, (width, height) => {
        const {columns, rows, tiles} = tile({x: -7, y: 11, width, height}, 185, 230)
        expect(tiles).toHaveLength(columns * rows)
        const all = {
          left: Math.min(...tiles.map(({x}) => x)),
          top: Math.min(...tiles.map(({y}) => y)),
          right: Math.max(...tiles.map(({x}) => x + 185)),
          bottom: Math.max(...tiles.map(({y}) => y + 230)),
        }
        expect(all.left).toBeLessThanOrEqual(-7 + 1e-6)
        expect(all.top).toBeLessThanOrEqual(11 + 1e-6)
        expect(all.right).toBeGreaterThanOrEqual(-7 + width - 1e-6)
        expect(all.bottom).toBeGreaterThanOrEqual(11 + height - 1e-6)
        if (columns > 1) expect(tiles[0]!.x + 185 - tiles[1]!.x).toBeCloseTo(overlapMm, 9)
      }),
    )
  })

  test('are no more than are needed', () => {
    expect(tile({x: 0, y: 0, width: 185, height: 230}, 185, 230).tiles).toHaveLength(1)
    expect(tile({x: 0, y: 0, width: 186, height: 230}, 185, 230).tiles).toHaveLength(2)
  })
})

describe('the templates of 100 builds of chance', () => {
  test('have no words on other words, and nothing outside their frames', () => {
    fc.assert(
      fc.property(randomBuild, (frontMatter) => {
        const {build} = readBuild(`---\n${frontMatter}\n---\n`, {slug: 'chance', journal: {}})
        for (const {shapes, frame, name} of templates(
          planInstrument(settle(build), {journal: {}, pieces: []}),
        )) {
          const boxes = shapes.filter((shape): shape is Text => shape.is === 'text').map(textBox)
          boxes.forEach((box, i) => {
            expect(
              boxes.slice(i + 1).some((other) => overlaps(box, other)),
              name,
            ).toBe(false)
          })
          const all = extent(shapes)
          expect(all.x).toBeGreaterThanOrEqual(frame.x)
          expect(all.y + all.height).toBeLessThanOrEqual(frame.y + frame.height)
        }
      }),
      {numRuns: 100, seed: 7},
    )
  })
})

describe('bars', () => {
  test('are 100 mm and 4 in long', () => {
    const long = bothBars([0, 0]).flatMap((shape) =>
      shape.is === 'path' && shape.points[0]![1] === shape.points[1]![1]
        ? [shape.points[1]![0] - shape.points[0]![0]]
        : [],
    )
    expect(long).toEqual([100, 101.6])
  })
})

describe('words of a PDF', () => {
  test.each([
    ['Åsa’s “bell” – Ø 3 °', 'Åsa’s “bell” – Ø 3 °'],
    ['Łódź', 'Lódz'],
    ['−1/4', '-1/4'],
    ['船', '?'],
  ])('%s is spelt %s', (text, spelt) => {
    expect(plainLatin(text)).toBe(spelt)
  })
})
