import {readFileSync} from 'node:fs'
import type {Element} from 'hast'
import type {RootContent} from 'mdast'
import {gfmToMarkdown} from 'mdast-util-gfm'
import {toMarkdown} from 'mdast-util-to-markdown'
import {visit} from 'unist-util-visit'
import {describe, expect, test} from 'vitest'
import {cutDiagram} from '../../plugins/drawings/cut-diagram.ts'
import {pageSvg} from '../../plugins/drawings/writers/svg.ts'
import {cutList} from '../../plugins/sections/cut-list.ts'
import {kitToMarkdown} from '../../plugins/sections/kit-to-markdown.ts'
import {partName} from '../../plugins/words/cut-list.ts'
import {planOf} from '../support/plan-of.ts'

function read(frontMatter: string): string {
  const children: RootContent[] = cutList.content({...planOf(frontMatter), attributes: {}})
  const options = {extensions: [gfmToMarkdown(), kitToMarkdown], bullet: '-' as const}
  return toMarkdown({type: 'root', children}, options).replaceAll(/\u00a0|&nbsp;|&#xA0;/g, ' ')
}

const lantern = readFileSync('builds/lantern-pier/index.md', 'utf8').split('---\n')[1]!

const rods = (more: string) => `title: a
units: mm
saw: {kerf: 3, trim: 0}
parts:
  - {name: rod, wood: beech, length: 480, width: 9, thickness: 9, count: 6}
${more}`

describe('cut list', () => {
  test('says first how many pieces, how much waste, and that no plan does better', () => {
    const text = read(lantern)
    expect(text).toMatch(
      /^3 pieces give all 7 parts; \d+ % of the wood is waste\. No plan does it with less wood\./,
    )
    expect(text).toContain('A saw cut takes 1/8 in (3.2 mm).')
    expect(text).toContain(
      'Rip 3 strips 21/32 in wide, and cut each to length: neck lamination 2, 34 31/32 in.',
    )
    expect(text).toContain('Put back on the rack: 38 in by 1 1/8 in; 3/4 in thick.')
    expect(text).toContain('Small parts stay on their strip')
  })

  test('shows pieces cut alike once', () => {
    const text = read(rods('stock: [{id: S, wood: beech, length: 1000, width: 9, thickness: 9, count: 8}]'))
    expect(text).toContain('Cut 3 pieces like this: S.1, S.2 and S.3.')
    expect(text.match(/Cut to length/g)).toHaveLength(1)
    expect(text).toContain('1 and 2 rod, 480 mm each.')
  })

  test('says what nearest pieces lack, and which boards to buy', () => {
    const text = read(rods('stock: [{id: S, wood: beech, length: 470, width: 9, thickness: 9}]'))
    expect(text).toContain('No piece at hand gives any of these parts.')
    expect(text).toContain('rod 1 and 5 more like it: S comes nearest, and lacks 10 mm of length')
    expect(text).toContain('Fewest boards that give them')
    expect(text).toContain('NHLA Rules')
  })

  test('a build that lists no wood is told what to buy', () => {
    const text = read(rods('summary: no wood yet'))
    expect(text).toContain('6 parts to cut, and no piece listed yet to cut them from.')
    expect(text).toContain('To buy')
  })

  test('names the keys that would bring it', () => {
    expect(cutList.needs({...planOf('title: a'), attributes: {}})).toEqual(['neck.length', 'parts'])
    expect(cutList.needs({...planOf(lantern), attributes: {}})).toEqual([])
  })
})

describe('cut diagram', () => {
  const {plan} = planOf(lantern)
  const names = new Map(plan.cuts!.parts.map(({id, called}) => [id, partName(called)]))
  const drawings = plan.cuts!.pieces.map((piece) => cutDiagram(piece, names, plan))

  test('every piece is drawn to scale, with every cut where it is sawn', () => {
    plan.cuts!.pieces.forEach((piece, at) => {
      const boxes = drawings[at]!.shapes.flatMap((shape) =>
        shape.is === 'path' && shape.closed ? [shape.points] : [],
      )
      const has = (x: number, y: number, w: number, l: number) =>
        boxes.some(
          ([a, , c]) =>
            a &&
            c &&
            Math.abs(a[0] - x) + Math.abs(a[1] - y) + Math.abs(c[0] - x - w) + Math.abs(c[1] - y - l) < 1e-6,
        )
      expect(has(0, 0, piece.widthMm, piece.lengthMm)).toBe(true)
      for (const {acrossMm, cuts} of piece.strips)
        for (const {atMm, widthMm, lengthMm} of cuts)
          expect(has(acrossMm, atMm, widthMm, lengthMm)).toBe(true)
      for (const one of piece.offcuts)
        expect(has(one.acrossMm, one.atMm, one.widthMm, one.lengthMm)).toBe(true)
    })
  })

  test('it says what it shows, and needs no style of its own', () => {
    for (const [at, drawing] of drawings.entries()) {
      const svg = pageSvg(drawing, `cuts-${at}`)
      expect(drawing.says).toContain('strip')
      visit(svg, 'element', ({tagName, properties}: Element) => {
        expect(tagName).not.toBe('style')
        expect(properties.style).toBeUndefined()
      })
    }
  })
})
