import type {Element, Nodes} from 'hast'
import {describe, expect, test} from 'vitest'
import {intonation} from '../../plugins/sections/intonation.ts'
import {toElements} from '../../plugins/sections/kit.ts'
import {textOf} from '../../plugins/sections/kit-table.ts'
import {lines} from '../../plugins/sections/lines.ts'
import type {Section} from '../../plugins/sections/section.ts'
import {strings} from '../../plugins/sections/strings.ts'
import {planOf} from '../support/plan-of.ts'

function shown(section: Section, frontMatter: string) {
  const input = {...planOf(frontMatter), attributes: {}}
  const needs = section.needs(input)
  const elements = needs.length > 0 ? [] : toElements(section.content(input))
  return {needs, elements, text: elements.map(textOf).join('\n')}
}

const all = (node: Nodes, name: string): Element[] => [
  ...(node.type === 'element' && node.tagName === name ? [node] : []),
  ...('children' in node ? node.children.flatMap((child) => all(child, name)) : []),
]

const fretless = `title: F
scale: 24 1/4
strings: [D3 .030w, A3 .020w, D4 .013]`
const fretted = `title: G
scale: {length: 24 1/4, fretted: true}
strings: [D3 .030w, A3 .020w, D4 .013]`

describe('strings', () => {
  test('says what to buy and how it pulls in one look', () => {
    const {text, elements} = shown(strings, fretless)
    expect(text).toMatch(/^All pull firm, together 64.7 lbf \(288 N\)\./)
    for (const word of ['.030w', '.020w', '.013', 'wound, nickel-plated steel', 'plain steel'])
      expect(text).toContain(word)
    expect(elements.flatMap((one) => all(one, 'svg'))).toHaveLength(1)
    expect(elements.flatMap((one) => all(one, 'table')).length).toBeGreaterThanOrEqual(3)
  })
  test('names the key that would bring it', () => {
    expect(shown(strings, 'title: N\nscale: 24').needs).toEqual(['strings'])
    expect(shown(strings, 'title: N\nscale: 24\nstrings: 3').needs).toEqual(['strings.1.note'])
  })
  test('without a scale length it still says what to buy', () => {
    const {text} = shown(strings, 'title: N\nstrings: [D3 .030w]')
    expect(text).toContain('.030w')
    expect(text).toContain('scale.length')
  })
  test('a string of which only the note is known is told what to buy', () => {
    expect(shown(strings, 'title: N\nscale: 24\nstrings: [{note: D4}]').text).toContain('.013')
  })
})

describe('lines', () => {
  test('says what to mark, and what the ruler does at worst', () => {
    const {text, elements} = shown(lines, fretless)
    expect(text).toMatch(/^19 marker lines\. Marked to/)
    expect(text).toContain('They divide 24 1/4 in')
    expect(text).toContain('line 18 is the furthest off, 2.3 cents')
    expect(text).toContain('That is fine enough.')
    expect(all(all(elements[1]!, 'table')[0]!, 'tr')).toHaveLength(20)
  })
  test('a coarse ruler is told how finely to mark', () => {
    expect(shown(lines, `${fretless}\nruler: 1/8`).text).toContain('mark to 1/32 in')
  })
  // Any list of just ratios: the fifth is 3/2, 701.955 cents, and leaves two thirds of the string.
  test('pure intervals stand on a fretless neck only', () => {
    expect(shown(lines, fretless).text).toContain('8 3/32 in')
    expect(shown(lines, fretless).text).toContain('harmonic seventh')
    expect(shown(lines, fretted).text).not.toContain('harmonic seventh')
  })
  test('a temperament is set against equal semitones', () => {
    const just = '16/15, 9/8, 6/5, 5/4, 4/3, 45/32, 3/2, 8/5, 5/3, 16/9, 15/8, 2/1'
    const {text} = shown(
      lines,
      fretless.replace('scale: 24 1/4', `scale: {length: 24 1/4, temperament: [${just}]}`),
    )
    expect(text).toContain('Off equal semitones')
    expect(text).toContain('−13.7 cents')
  })
  test('half frets are named as players name them', () => {
    const {text} = shown(
      lines,
      'title: D\nscale: {length: 27, fretted: true, pattern: [2, 4, 5, 7, 9, 10, 11, 12]}\nstrings: [D3 .024w]',
    )
    expect(text).toContain('6 1/2')
  })
})

describe('intonation', () => {
  test('fretless: no setback, and why', () => {
    const {text, elements} = shown(intonation, fretless)
    expect(text).toMatch(
      /^The bridge goes on its line, 24 1\/4 in \(616 mm\) from the nut line, with no setback/,
    )
    expect(elements).toHaveLength(2)
  })
  test('fretted: where the saddle goes in the first sentence', () => {
    const {text, elements} = shown(intonation, fretted)
    expect(text).toMatch(
      /^Set a straight saddle back \S+ in \([\d.]+ mm\) at D3 and \S+ in \([\d.]+ mm\) at D4 behind the bridge line\./,
    )
    expect(text).toContain('Square to the neck')
    expect(elements.flatMap((one) => all(one, 'svg'))).toHaveLength(1)
  })
  test('one string has no straight saddle', () => {
    expect(
      shown(intonation, 'title: O\nscale: {length: 24, fretted: true}\nstrings: [D4 .013]').text,
    ).toMatch(/^Set the saddle back/)
  })
  test('nylon without its own stiffness is not trusted blindly', () => {
    const {text} = shown(
      intonation,
      'title: Y\nunits: mm\nscale: {length: 400, fretted: true}\nstrings: [{note: C4, gauge: 0.8 mm, material: nylon}, {note: E4, gauge: 0.7 mm, material: nylon}]',
    )
    expect(text).toContain('only a usual one')
  })
  test.each([
    ['title: A\nscale: {fretted: true}\nstrings: [D4 .013]', 'scale.length'],
    ['title: A\nscale: {length: 24, fretted: true}', 'strings'],
    ['title: A\nscale: {length: 24, fretted: true}\nstrings: [{note: D4}]', 'strings.1.gauge'],
    [
      'title: A\nscale: {length: 24, fretted: true}\nstrings: [{note: D4, gauge: .030}]',
      'strings.1.material',
    ],
  ])('names the key that would bring it: %#', (frontMatter, key) => {
    expect(shown(intonation, frontMatter).needs).toEqual([key])
  })
})

test('a plot names itself for those who do not see it, and has no style', () => {
  for (const svg of [strings, intonation].flatMap((section) =>
    shown(section, fretted).elements.flatMap((one) => all(one, 'svg')),
  )) {
    const {ariaLabelledBy, ariaDescribedBy} = svg.properties
    const ids = svg.children.flatMap((child) => (child.type === 'element' ? [child.properties.id] : []))
    expect(ids).toContain(String(ariaLabelledBy))
    expect(ids).toContain(String(ariaDescribedBy))
    expect(JSON.stringify(svg)).not.toMatch(/"style"|NaN/)
  }
})
