import {describe, expect, test} from 'vitest'
import {readBuild, readJournal} from '../../../plugins/build-file/read.ts'
import type {JournalSettings} from '../../../plugins/build-file/schema/schema.ts'
import {planBuild} from '../../../plugins/plan/plan.ts'
import {readBody} from '../../../plugins/syntax/body.ts'
import {printedPlan} from '../../../plugins/words/printed-plan.ts'
import {changed} from '../../support/changed.ts'

const build = `
title: Slack water
scale: 24
strings: [D3 .030w, D4 .013, D4 .013]
nut: {kind: rod, diameter: 3/16}
tuners: {post-hole: 1/4}
anchors: {kind: ferrule}
neck: {width: 1 1/2, thickness: 3/4, wood: white ash}
parts: [{name: stick, wood: white ash, length: 34, width: 1 1/2, thickness: 1}]
`
const journal = {currency: {value: 'EUR', text: 'EUR', place: {line: 1, column: 1, endLine: 1, endColumn: 1}}}

function planOf(changes: Record<string, string> = {}, body = '', more: JournalSettings = {}) {
  const text = `---\n${changed(build, changes)}---\n${body}`
  const {build: read} = readBuild(text, {slug: 'slack-water', journal: {}, body: readBody})
  return printedPlan(planBuild(read, {journal: {...journal, ...more}, pieces: []}))
}
const items = (changes?: Record<string, string>) =>
  (planOf(changes).bill ?? []).map(({item, count}) => `${count} ${item}`)

describe('bill', () => {
  test('lists strings by gauge, and the hardware that the design asks for', () => {
    expect(items()).toEqual(
      expect.arrayContaining([
        '1 string .030w',
        '2 string .013, steel',
        '3 tuners',
        '3 ferrules',
        '1 rod for the nut, 3/16 in',
      ]),
    )
  })

  test('names fret wire by its metal and its width', () => {
    const fretted = {scale: '{length: 24, fretted: true}'}
    expect(items(fretted).join()).toMatch(/1 fret wire, [\d /]+ in in all/)
    expect(items({...fretted, frets: '{wire-width: .08, material: brass}'}).join()).toMatch(
      /1 fret wire, brass, 0\.08 in wide, [\d /]+ in in all/,
    )
  })

  test('names nothing twice that was paid for', () => {
    const found = items({cost: '[{item: Tuners with screws, count: 3, each: 2.10}]'})
    expect(found[0]).toBe('3 Tuners with screws')
    expect(found).not.toContain('3 tuners')
    expect(found).toContain('3 ferrules')
  })

  test('sums what has a price, in the journal’s currency', () => {
    const {bill, cost} = planOf({
      cost: '[{item: tuners, count: 3, each: 2.10}, {item: varnish, each: 4.35}, {item: ferrules, count: 3}]',
    })
    expect(bill![0]).toEqual({item: 'tuners', count: 3, each: 2.1, total: 6.3, from: 'cost'})
    expect(bill![2]).toEqual({item: 'ferrules', count: 3, from: 'cost'})
    expect(cost).toEqual({materials: 10.65, hours: 0, total: 10.65, currency: 'EUR'})
  })

  test('says what a price leaves for the work', () => {
    const paid = {cost: '[{item: varnish, each: 4.35}]', price: '120'}
    expect(planOf(paid).cost).toEqual({
      materials: 4.35,
      hours: 0,
      total: 4.35,
      price: 120,
      left: 115.65,
      currency: 'EUR',
    })
    expect(planOf({price: '20'}).cost).toMatchObject({hours: 0, price: 20, left: 20})
  })

  test('takes wood from what its piece cost, once it is cut', () => {
    const stock =
      '[{id: A1, wood: white ash, length: 40, width: 2, thickness: 1, cost: 7.5}, {id: A2, wood: white ash, length: 40, width: 2, thickness: 1, cost: 9}]'
    const {bill, cost} = planOf({stock})
    expect(bill!.filter(({from}) => from === 'stock')).toEqual([
      {item: 'white ash, A1', count: 1, each: 7.5, total: 7.5, from: 'stock'},
    ])
    expect(cost).toMatchObject({materials: 7.5, total: 7.5})
  })

  test('adds up the hours of the days, and leaves out what has no price', () => {
    expect(planOf({}, '\n## 2026-03-07 Neck (1 h 30 min)\n\n## 2026-03-08 Box (45 min)\n').cost).toEqual({
      hours: 2.25,
      currency: 'EUR',
    })
    expect(planOf().cost).toBeUndefined()
  })
})

test('hours come to money where the journal says what an hour counts for', () => {
  const {settings} = readJournal('rate: 20\nday: 3 h')
  const paid = {cost: '[{item: varnish, each: 4.35}]', price: '120'}
  const days = '\n## 2026-03-07 Neck (1 h 30 min)\n\n## 2026-03-08 Box\n'
  // 1.5 h told and one day of 3 h: 4.5 h at 20 are 90; 120 less 4.35 less 90 are 25.65.
  const {cost} = planOf(paid, days, settings)
  expect(cost).toMatchObject({hours: 1.5, dayHours: 3, rate: 20, work: 90, total: 94.35, margin: 25.65})
  expect(planOf({...paid, price: '80'}, days, settings).cost!.margin).toBe(-14.35)
  // Without hours there is nothing to count, and without a rate a day without hours is not guessed at.
  expect(planOf(paid, '', settings).cost).not.toHaveProperty('work')
  const {rate: _, ...unrated} = settings
  expect(planOf(paid, days, unrated).cost).toMatchObject({hours: 1.5, total: 4.35})
})

test('what strings stand on is got, whatever it is made of', () => {
  const flat = items({nut: '{kind: flat}', bridge: '{kind: saddle}'})
  expect(flat).toEqual(expect.arrayContaining(['1 blank for the nut', '1 blank for the bridge']))
  expect(items()).not.toContain('1 blank for the nut')
})
