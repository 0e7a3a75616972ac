import type {RootContent} from 'mdast'
import {gfmToMarkdown} from 'mdast-util-gfm'
import {toMarkdown} from 'mdast-util-to-markdown'
import {describe, expect, it} from 'vitest'
import {allSections} from '../../plugins/sections/all.ts'
import {asBuilt} from '../../plugins/sections/as-built.ts'
import {assumptions} from '../../plugins/sections/assumptions.ts'
import {beforeYouCut} from '../../plugins/sections/before-you-cut.ts'
import {bill} from '../../plugins/sections/bill.ts'
import {kitToMarkdown} from '../../plugins/sections/kit-to-markdown.ts'
import {lineage} from '../../plugins/sections/lineage.ts'
import {played} from '../../plugins/sections/played.ts'
import type {Section, SectionInput} from '../../plugins/sections/section.ts'
import {sectionNames} from '../../plugins/tables/section-names.ts'
import {planOf} from '../support/plan-of.ts'

const read = (content: RootContent[]) =>
  toMarkdown({type: 'root', children: content}, {extensions: [gfmToMarkdown(), kitToMarkdown], bullet: '-'})
const input = (text: string, more: Partial<SectionInput> = {}): SectionInput => ({
  ...planOf(text),
  attributes: {},
  ...more,
})
const words = (section: Section, of: SectionInput) => read(section.content(of))

describe('the sections', () => {
  it('are there, one for every name', () => {
    expect(allSections.map(({name}) => name).sort()).toEqual([...sectionNames].sort())
  })
})

describe('before you cut', () => {
  it('meets a sound build with one short line', () => {
    expect(words(beforeYouCut, input('title: Needle box'))).toMatch(
      /^Nothing needs a look\. \[6 values\]\(#assumptions\) are assumed\.\n$/,
    )
  })

  it('says what was found in the words of the file, gravest first, each with its rule', () => {
    const place = {line: 3, column: 8, endLine: 3, endColumn: 12}
    const problems = [
      {
        rule: 'unknown-key',
        severity: 'warning',
        message: 'look at this',
        line: 1,
        column: 1,
        endLine: 1,
        endColumn: 1,
      },
      {rule: 'out-of-range', severity: 'fault', message: 'will 1/2 do?', ...place},
    ] as const
    const text = words(beforeYouCut, input('title: x\nscale: 24', {problems}))
    expect(text).toBe(
      '**1 would not work as drawn and 1 to look at again**. [21 values](#assumptions) are assumed.\n\n' +
        '*What was found, and what would do*\n\n' +
        '### Would not work as drawn\n\n- `scale.length: 24`: will 1/2 do? [Why, and what to do](/rules/#out-of-range)\n\n' +
        '### Look again\n\n- Look at this. [Why, and what to do](/rules/#unknown-key)\n',
    )
  })
})

describe('assumed', () => {
  it('lists each value with its reason', () => {
    expect(words(assumptions, input('title: x'))).toContain(
      '| `ruler`   | 1/32  | common practice, no source',
    )
  })
})

describe('as built', () => {
  const measures = [
    {
      path: 'scale.length',
      of: 'measured.scale.length',
      planned: 616,
      measured: 617,
      difference: 1,
      tolerance: 0.5,
      isOut: true,
      unit: 'mm' as const,
      effects: [{does: 'shift line' as const, by: 'tuner' as const, label: '12', cents: -3}],
    },
    {
      path: 'resonance',
      of: 'measured.resonance',
      planned: 190,
      measured: 205,
      difference: 15,
      unit: 'Hz' as const,
      effects: [],
    },
  ]

  it('sets the measures beside the plan, and says what they do', () => {
    const {plan, ...rest} = input('title: x\nunits: mm\nmeasured: {resonance: 205}')
    const text = words(asBuilt, {...rest, plan: {...plan, asBuilt: measures}})
    expect(text).toMatch(/scale length +\| +616 mm \| +617 mm \| +1 mm more \| +0.5 mm, too far off \|/)
    expect(text).toMatch(/the box’s own pitch \| +190 Hz \| +205 Hz \| +15 Hz more \| +\|/)
    expect(text).toContain('- On the tuner line 12 sounds 3.0 cents flat')
  })

  it('sets out how it moved, where it was measured more than once', () => {
    const days = '[{on: 2026-03-15, resonance: 205}, {on: 2026-06-01, resonance: 199}]'
    const given = input(`title: x\nunits: mm\nmeasured: ${days}`)
    expect(words(asBuilt, given)).toContain('The last day counts: 2026-06-01.')
    // Each day stands in the words below its plot.
    const plotted = JSON.stringify(asBuilt.content(given))
    expect(plotted).toContain('205 Hz on 2026-03-15, 199 Hz on 2026-06-01')
  })

  it('waits for measures', () => expect(asBuilt.needs(input('title: x'))).toEqual(['measured']))
})

describe('played', () => {
  it('lists notes and scores as written', () => {
    const text = words(
      played,
      input(
        'title: x\nplayed: [{on: 2026-03-16, again: yes, scores: {buzz: 5}}, {on: 2026-04-01, again: with changes, remark: "dry, thin"}]',
      ),
    )
    expect(text).toMatch(/2026-03-16 \| yes +\| +5 \| +\|/)
    expect(text).toMatch(/2026-04-01 \| with changes +\| +\| dry, thin \|/)
  })

  it('grows with what is written, and no further, where every day has scores of its own', () => {
    const scores = (day: number) => Array.from({length: 10}, (_, at) => `own-${day}-${at}: 3`).join(', ')
    const days = (count: number) =>
      Array.from({length: count}, (_, day) => `{on: 2026-03-16, scores: {${scores(day)}}}`).join(', ')
    const cells = (count: number) =>
      words(played, input(`title: x\nplayed: [${days(count)}]`)).split('|').length
    expect(cells(80)).toBeLessThan(2.5 * cells(40))
    expect(words(played, input(`title: x\nplayed: [${days(3)}]`))).toContain('own-2-8 3, own-2-9 3')
  })
})

describe('where it comes from', () => {
  const relatives = {
    original: {
      slug: 'needle-box-one',
      title: 'Needle box one',
      changes: [{path: 'scale.length', was: '24', is: '25 1/2'}],
    },
    copies: [{slug: 'lantern-pier', title: 'Lantern pier'}],
  }

  it('names the original and what was changed, and the copies', () => {
    const text = words(lineage, input('title: x', {relatives}))
    expect(text).toMatch(
      /^Copied from \[Needle box one\]\(\/builds\/needle-box-one\/\)\. \[What differs: one value\]\(\/builds\/[^)]*\/changes\/\)/,
    )
    expect(text).toContain('- [Lantern pier](/builds/lantern-pier/)')
  })

  it('is silent where there is neither', () => expect(lineage.needs(input('title: x'))).toEqual(['based-on']))
})

describe('the bill', () => {
  it('says what is to be got, and what it costs', () => {
    const {plan, ...rest} = input('title: x')
    const cost = {materials: 6.3, hours: 12.5, total: 6.3, currency: 'EUR'}
    const rows = [{item: 'tuners', count: 3, each: 2.1, total: 6.3, from: 'cost'}]
    const text = words(bill, {...rest, plan: {...plan, bill: rows, cost}})
    expect(text).toMatch(/\| tuners \| +3 \| 2.10 \| 6.30 EUR \| cost \|/)
    expect(text).toContain('- Work: 12.5 h')
  })
})
