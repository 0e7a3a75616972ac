import type {RootContent} from 'mdast'
import {gfmToMarkdown} from 'mdast-util-gfm'
import {toMarkdown} from 'mdast-util-to-markdown'
import {describe, expect, test} from 'vitest'
import {bill} from '../../plugins/sections/bill.ts'
import {cautions} from '../../plugins/sections/cautions.ts'
import {kitToMarkdown} from '../../plugins/sections/kit-to-markdown.ts'
import type {Section} from '../../plugins/sections/section.ts'
import {settingUp} from '../../plugins/sections/setting-up.ts'
import {comesFirst} from '../../plugins/tables/hazards.ts'
import {changed} from '../support/changed.ts'
import {planOf} from '../support/plan-of.ts'
import {soundBuilds} from '../support/sound-builds.ts'

function read(section: Section, frontMatter: string): string {
  const children: RootContent[] = section.content({...planOf(frontMatter), attributes: {}})
  const options = {extensions: [gfmToMarkdown(), kitToMarkdown], bullet: '-' as const}
  return toMarkdown({type: 'root', children}, options).replaceAll(/ |&nbsp;|&#xA0;/g, ' ')
}
const needs = (section: Section, frontMatter: string) =>
  section.needs({...planOf(frontMatter), attributes: {}})
const build = soundBuilds['on top']

describe('cautions', () => {
  test('say first what comes first, then what can happen, the worst first', () => {
    const text = read(cautions, build)
    expect(text).toMatch(/^\*\*\d+ on this build\*\*, each beside its step/)
    expect(text).toContain(comesFirst)
    const at = (words: string) => text.indexOf(words)
    expect(at('A saw can throw the stick back')).toBeGreaterThan(0)
    expect(at('A saw can throw the stick back')).toBeLessThan(at('Chips and splinters fly'))
    expect(text).toContain('29 CFR 1910.95, Table G-16')
  })

  test('wait for something to work on', () => {
    expect(needs(cautions, 'title: x')).toEqual(['box', 'neck'])
    expect(needs(cautions, build)).toEqual([])
  })
})

describe('setting up', () => {
  test('says what to move, and asks to measure where nothing was', () => {
    expect(read(settingUp, build)).toContain('measure the strings’ height over nut and octave')
    const text = read(settingUp, changed(build, {measured: '{action.octave: 17/64}'}))
    expect(text).toContain('**Lower the bridge by 3/32 in, twice as much.**')
    expect(text).toContain('A string hops off the bridge')
  })

  test('waits for strings and a scale', () => {
    expect(needs(settingUp, 'title: x')).toEqual(['strings', 'scale.length'])
    expect(needs(settingUp, 'title: x\nstrings: [D3 .030w]')).toEqual(['scale.length'])
  })
})

describe('bill', () => {
  test('shows sums only of what has a price', () => {
    expect(read(bill, build)).not.toContain('Materials')
    const text = read(bill, changed(build, {cost: '[{item: tuners, count: 3, each: 2.10}]'}))
    expect(text).toMatch(/tuners +\| +3 \| +2\.10 \| +6\.30 \| cost/)
    expect(text).toContain('Materials: 6.30')
  })
})
