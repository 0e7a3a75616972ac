import {describe, expect, it} from 'vitest'
import {readBody} from '../../plugins/syntax/body.ts'
import {parseBuildFile} from '../../plugins/syntax/parse-build-file.ts'

const frontMatter = '---\ntitle: Needle box\n---\n\n'
const read = (body: string) => readBody(frontMatter + body)
const place = (line: number, column: number, endLine: number, endColumn: number) => ({
  line,
  column,
  endLine,
  endColumn,
})

describe('days', () => {
  it.each([
    ['## 2026-03-07 Milling the strips (1 h 30 min)', '2026-03-07', 'Milling the strips', 90],
    ['# 2026-03-07', '2026-03-07', '', undefined],
    ['###### 2026-03-07 (90 min)', '2026-03-07', '', 90],
    ['## 2026-03-07: sanding (1.5 h)', '2026-03-07', 'sanding', 90],
    ['## 2026-03-07 – *Oil*, second coat (rain)', '2026-03-07', 'Oil, second coat (rain)', undefined],
    ['## 2026-03-07 Clamped (7:30)', '2026-03-07', 'Clamped (7:30)', undefined],
    ['## 2026-03-07 Two (of three) (2 h)', '2026-03-07', 'Two (of three)', 120],
    ['## 2026-03-07 Hours (2 h) and more', '2026-03-07', 'Hours (2 h) and more', undefined],
    ['2026-03-07 Underlined (1 h)\n---', '2026-03-07', 'Underlined', 60],
  ])('reads %j', (heading, iso, title, minutes) => {
    expect(read(heading).days).toMatchObject([{iso, title, ...(minutes === undefined ? {} : {minutes})}])
    expect(read(heading).days[0]).toSatisfy((day: object) => 'minutes' in day === (minutes !== undefined))
  })

  it.each([
    '## On 2026-03-07',
    '## 2026-02-30 No such day',
    '## 2026-3-7',
    '## 2026-03-071',
    '2026-03-07 no heading',
    '> ## 2026-03-07 Quoted',
    '    ## 2026-03-07',
    '```\n## 2026-03-07\n```',
  ])('takes %j for none', (text) => expect(read(text).days).toEqual([]))

  it('keeps two of one day, each with its place', () => {
    const {days} = read('## 2026-03-07 Glue (10 min)\n\n## 2026-03-07 Saw (20 min)\n')
    expect(days.map(({minutes}) => minutes)).toEqual([10, 20])
    expect(days.map((day) => day.place)).toEqual([place(5, 1, 5, 28), place(7, 1, 7, 27)])
  })
})

describe('links', () => {
  it.each([
    ['![The head](photos/front%20side.jpg "t")', 'photos/front side.jpg', true, 'The head'],
    ['![](a.jpg)', 'a.jpg', true, ''],
    ['![The head][1]\n\n[1]: a.jpg', 'a.jpg', true, 'The head'],
    ['<img src="a.jpg" alt="The head">', 'a.jpg', true, 'The head'],
    ['[sketch](sketch.pdf#page=2)', 'sketch.pdf', false, undefined],
    ['[other](../other/index.md)', '../other/index.md', false, undefined],
    ['[out](%2e%2e/%2e%2e/secret)', '../../secret', false, undefined],
  ])('finds %j', (text, target, isPicture, alt) => {
    expect(read(text).links).toEqual([
      {
        target,
        isPicture,
        ...(alt === undefined ? {} : {alt}),
        place: expect.objectContaining({line: 5, column: 1}),
      },
    ])
  })

  it.each([
    '[a](https://example.org/x)',
    '[a](#part)',
    '[a](/rules/)',
    '[a](mailto:a@b.c)',
    '`![a](b.jpg)`',
    '![a](//b.c/d)',
  ])('leaves %j alone', (text) => expect(read(text).links).toEqual([]))
})

describe('directives and values', () => {
  it('are found with their places in the file', () => {
    const text = `${frontMatter}::drawing{view=top}\n\nAt :value[bridge.station].\n`
    const body = readBody(parseBuildFile(text))
    expect(body).toEqual(readBody(text))
    expect(body.directives).toEqual([{name: 'drawing', attributes: {view: 'top'}, place: place(5, 1, 5, 20)}])
    expect(body.references).toEqual([{path: 'bridge.station', place: place(7, 4, 7, 26)}])
  })
})
