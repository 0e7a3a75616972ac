import {describe, expect, test} from 'vitest'
import {readBuild, readJournal} from '../../../plugins/build-file/read.ts'
import {journalSchema} from '../../../plugins/build-file/schema/schema.ts'
import {startFrom} from '../../../plugins/build-file/start-from.ts'
import {newBuild, newJournal} from '../../../plugins/build-file/writing/new-build.ts'
import {usualKinds} from '../../../plugins/tables/usual-kinds.ts'
import {planOf} from '../../support/plan-of.ts'

const frontMatterOf = (text: string) => text.split(/^---$/m)[1] ?? ''
const told = (text: string) =>
  planOf(frontMatterOf(text)).problems.map(({line, rule, message}) => `${line} ${rule} ${message}`)

describe('a new build of every usual kind is sound, and has no remark about itself', () => {
  for (const [name, kind] of Object.entries(usualKinds))
    for (const units of ['in', 'mm'] as const)
      test(`${name} in ${units}`, () =>
        expect(told(newBuild(kind, {title: 'Tide: a "small" one', units}))).toEqual([]))
  test('a high first string is usual in one order alone', () => {
    const text = newBuild(usualKinds['ukulele-concert'], {title: 'A'})
    const [, low, middle] = text.match(/^ {2}- \{note: .*$/gm)!
    const swapped = text.replace(low!, 'low').replace(middle!, low!).replace('low\n', `${middle}\n`)
    expect(told(swapped)).toEqual([expect.stringContaining('pitches-out-of-order')])
  })
  test('with another scale', () => {
    const text = newBuild(usualKinds['three-string-slide'], {title: 'A', scale: '23 1/2'})
    expect(readBuild(text, {slug: 'a'}).build.values.scale?.length?.mm).toBeCloseTo(23.5 * 25.4, 9)
  })
})

test('the settings of a new journal read without a problem, left out and taken up alike', () => {
  const text = newJournal()
  expect(readJournal(text)).toEqual({settings: {}, problems: []})
  const {settings, problems} = readJournal(text.replace(/^# (?=[a-z-]+: )/gm, ''))
  expect([Object.keys(settings), problems]).toEqual([Object.keys(journalSchema.fields), []])
})

const past = `---
title: Needle box
started: 2026-03-07
finished: 2026-03-15
status: strung up
summary: The first one.
cover: photos/front.jpg
recordings: [sounds/one.mp3]
box: 10 1/8 x 7 x 2   # the box itself
scale: 24 1/4
strings: [D3 .030w, A3 .020w, D4 .013]
neck: 1 5/8 x 13/16
screws:
  - {size: 6, length: 1, at: [17 1/4, 22 3/4], into: neck}
cost: [{item: tuners, each: 2}]
stock: [{id: A4, wood: white ash, length: 40, width: 3, thickness: 3/4}]
measured: {on: 2026-03-15, scale.length: 24 9/32, box.width: 7 1/16, strings.A3.gauge: .021w, neck.width: 1 9/16, action.octave: 15/64, lines: {12: 12 5/32}, resonance: 205}
played: [{on: 2026-03-16, again: yes}]
---

## 2026-03-07 Milling (1 h)
`

describe('a build that starts from a past one', () => {
  const {values} = readBuild(startFrom(past, 'needle-box')!, {slug: 'again'}).build
  test('has its dimensions as measured where measured', () => {
    expect(values.scale?.length?.text).toBe('24 9/32')
    expect(values.box).toMatchObject({length: {text: '10 1/8'}, width: {text: '7 1/16'}, depth: {text: '2'}})
    expect(values.strings?.[1]).toMatchObject({note: {name: 'A3'}, gauge: {text: '.021w'}})
    expect(values.neck).toMatchObject({width: {nut: {text: '1 9/16'}}, thickness: {text: '13/16'}})
    expect(values.action?.octave?.text).toBe('15/64')
  })
  test('leaves its history behind', () => {
    for (const key of [
      'started',
      'finished',
      'summary',
      'cover',
      'recordings',
      'cost',
      'stock',
      'measured',
      'played',
    ])
      expect(values).not.toHaveProperty(key)
    expect(startFrom(past, 'needle-box')).not.toContain('2026-03-07 Milling (1 h)')
  })
  test('says what it was copied from, and is an idea', () =>
    expect(values).toMatchObject({
      title: {value: 'Needle box, again'},
      'based-on': {value: 'needle-box'},
      status: {value: 'idea'},
    }))
  test('keeps the remarks beside the dimensions', () =>
    expect(startFrom(past, 'needle-box')).toContain('# the box itself'))
  test('another scale moves what stands on the box along with the bridge', () => {
    const moved = readBuild(startFrom(past, 'needle-box', {scale: '23 1/4'})!, {slug: 'a'}).build.values
    expect(moved.scale?.length?.text).toBe('23 1/4')
    expect(moved.screws?.[0]?.at?.map(({text}) => text)).toEqual(['16 7/32', '21 23/32'])
  })
  test('in other units no size changes', () => {
    const metric = readBuild(startFrom(past, 'needle-box', {units: 'mm'})!, {slug: 'a'})
    expect(metric.problems).toEqual([])
    expect(metric.build.values).toMatchObject({units: {value: 'mm'}})
    const sizes = (from: typeof values) => [
      from.scale?.length?.mm,
      from.box?.depth?.mm,
      from.neck?.thickness?.mm,
      from.strings?.[0]?.gauge?.mm,
      from.action?.octave?.mm,
    ]
    expect(sizes(metric.build.values)).toEqual(sizes(values))
  })
})
