import {toHtml} from 'hast-util-to-html'
import type {RootContent} from 'mdast'
import {gfmToMarkdown} from 'mdast-util-gfm'
import {toMarkdown} from 'mdast-util-to-markdown'
import {describe, expect, it} from 'vitest'
import {
  facts,
  figure,
  figures,
  list,
  note,
  paragraph,
  problemLink,
  source,
  steps,
  toElements,
} from '../../plugins/sections/kit.ts'
import {table, textOf} from '../../plugins/sections/kit-table.ts'
import {kitToMarkdown} from '../../plugins/sections/kit-to-markdown.ts'
import {area, force, length, lengthAlone, mass} from '../../plugins/sections/measures.ts'
import {lengthBoth} from '../../plugins/words/lengths.ts'
import {angle, cents, massPerLength, number, percent} from '../../plugins/words/quantities.ts'

const inches = {units: 'in', rulerMm: 25.4 / 32} as const
const millimetres = {units: 'mm', rulerMm: 0.5} as const
const html = (...content: RootContent[]) => toHtml(toElements(content))
const copied = (content: RootContent) => toElements([content]).map(textOf).join('')
const markdown = (...children: RootContent[]) =>
  toMarkdown({type: 'root', children}, {extensions: [gfmToMarkdown(), kitToMarkdown], bullet: '-'})

describe('lengths', () => {
  it.each([
    [292.1, inches, '11 1/2 in (292.1 mm)'],
    [-57.15, inches, '−2 1/4 in (−57.2 mm)'],
    [0, inches, '0 in (0 mm)'],
    [292.1, millimetres, '292 mm (11 1/2 in)'],
    [0.79375, inches, '1/32 in (0.8 mm)'],
  ])('%d mm read and copy as plain text', (mm, ruler, text) => {
    expect(copied(length(mm, ruler))).toBe(text)
    const [own, other] = lengthBoth(mm, ruler)
    expect(`${own} (${other})`).toBe(text)
    expect(markdown(paragraph(length(mm, ruler)))).toBe(`${text}\n`)
  })

  it('show the second unit smaller and the fraction as one', () => {
    expect(html(length(292.1, inches))).toBe(
      '<span class="measure">11 <span class="frac">1/2</span> in <small>(292.1 mm)</small></span>',
    )
    expect(copied(lengthAlone(292.1, inches))).toBe('11 1/2 in')
  })

  it('are rounded to the side that is asked for', () => {
    expect(copied(lengthAlone(13, inches, 'down'))).toBe('1/2 in')
    expect(copied(lengthAlone(12.6, inches, 'up'))).toBe('1/2 in')
  })
})

describe('other quantities', () => {
  // 1 lbf = 4.448 222 N, 1 oz = 28.349 52 g, 1 sq in = 645.16 mm²: NIST SP 811 (2008), appendix B.8.
  it.each([
    [force(4.448222 * 13.9, inches), '13.9 lbf (62 N)'],
    [force(62, millimetres), '62 N (13.9 lbf)'],
    [mass(0.5669904, inches), '1 lb 4 oz (567 g)'],
    [mass(0.0999, millimetres), '100 g (4 oz)'],
    [area(645.16, inches), '1 sq in (645 mm²)'],
  ])('%# carry both units', (node, text) => expect(copied(node)).toBe(text))

  it.each([
    [cents(3), '+3 cents'],
    [cents(-2), '−2 cents'],
    [cents(0.04), '0 cents'],
    [cents(-1), '−1 cent'],
    [cents(1.26, 1), '+1.3 cents'],
    [massPerLength(0.00138), '1.38 g/m'],
    [angle(13.3), '13.5°'],
    [percent(0.123), '12 %'],
    [number(-0.04, 1), '0'],
    [number(-1.25, 1), '−1.3'],
    [number(2, 2), '2'],
  ])('%s is right', (text, expected) => expect(text).toBe(expected))
})

describe('a table', () => {
  const made = table({
    caption: 'Lines',
    columns: [{head: 'Line'}, {head: 'From the nut', align: 'right'}],
    rows: [['12', lengthAlone(308, inches)]],
    note: 'Measured.',
  })

  it('has caption, scopes and a box that scrolls, and nothing obsolete', () => {
    expect(html(made).replaceAll('\n', '')).toBe(
      '<div class="table"><div class="scrolling"><table class="n2"><caption>Lines</caption>' +
        '<thead><tr><th scope="col">Line</th><th scope="col">From the nut</th></tr></thead><tbody><tr>' +
        '<th scope="row">12</th><td>12 <span class="frac">1/8</span> in</td>' +
        '</tr></tbody></table></div><p class="note">Measured.</p></div>',
    )
  })

  it('reads as Markdown', () => {
    expect(markdown(made)).toBe(
      '**Lines**\n\n| Line | From the nut |\n| ---- | -----------: |\n| 12   |    12 1/8 in |\n\nMeasured.\n',
    )
  })
})

describe('the other builders', () => {
  it('make a definition list of facts', () => {
    expect(html(facts([['Strings', 'three']]))).toBe('<dl><div><dt>Strings</dt><dd>three</dd></div></dl>')
    expect(markdown(facts([['Strings', 'three']]))).toBe('- Strings: three\n')
  })

  it('fold figures under their summary', () => {
    expect(html(figures('figures', [paragraph('EI 1.2')]))).toBe(
      '<details class="figures"><summary>figures</summary><p>EI 1.2</p></details>',
    )
  })

  it('give each step a box that its text labels', () => {
    const made = steps([{does: ['Saw the scarf'], under: [note('Mind the blade.')]}])
    expect(html(made).replaceAll('\n', '')).toBe(
      '<ul class="steps"><li class="task-list-item"><label><input type="checkbox"> <span>Saw the scarf</span></label><p class="note">Mind the blade.</p></li></ul>',
    )
    expect(markdown(made)).toBe('- [ ] Saw the scarf\n\n  Mind the blade.\n')
  })

  it('carry a drawing whole', () => {
    const svg = {type: 'element' as const, tagName: 'svg', properties: {viewBox: '0 0 1 1'}, children: []}
    const made = figure(svg, {alt: 'From above', caption: ['From above']})
    expect(html(made)).toBe(
      '<figure class="drawing"><svg viewBox="0 0 1 1"></svg><figcaption>From above</figcaption></figure>',
    )
    expect(markdown(made)).toBe('[From above]\n')
  })

  it('write lists, sources and links to rules', () => {
    expect(html(list(['a', ['b ', problemLink('unknown-key', 'why')]]))).toContain(
      '<li>b <a href="/rules/#unknown-key">why</a></li>',
    )
    expect(html(source('common practice, no source'))).toBe(
      '<p class="source">Source: common practice, no source</p>',
    )
  })

  it('take nothing in a text for Markdown or HTML', () => {
    expect(html(paragraph('<b>*x*</b> & [y](z)'))).toBe('<p>&#x3C;b>*x*&#x3C;/b> &#x26; [y](z)</p>')
    expect(markdown(paragraph('*x*'))).toBe('\\*x\\*\n')
  })
})
