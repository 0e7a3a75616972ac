import {toHtml} from 'hast-util-to-html'
import {expect, test} from 'vitest'
import {familyTree} from '../../plugins/drawings/plots/family-tree.ts'
import {families} from '../../plugins/plan/family.ts'

/** Builds by what each was copied from. */
const journal = (from: Readonly<Record<string, string | undefined>>) =>
  new Map(Object.entries(from).map(([slug, basedOn]) => [slug, {title: slug, basedOn}]))
const told = (slug: string, from: Parameters<typeof journal>[0]) =>
  families(journal(from))(slug).rows.map(({slug: one, depth}) => `${depth} ${one}`)

test('copies of copies stand below their original, from whichever is asked', () => {
  const all = {a: undefined, b: 'a', d: 'b', c: 'a', x: undefined}
  for (const slug of ['a', 'b', 'c', 'd']) expect(told(slug, all)).toEqual(['0 a', '1 b', '2 d', '1 c'])
  expect(told('x', all)).toEqual(['0 x'])
})

test('an original that is not there is told as missing, and no link', () => {
  const {rows} = families(journal({b: 'gone', c: 'gone'}))('b')
  expect(rows.map(({slug, isMissing}) => [slug, isMissing])).toEqual([
    ['gone', true],
    ['b', undefined],
    ['c', undefined],
  ])
  const html = toHtml(familyTree(rows, 'b'))
  expect(html).toContain('gone, not in this journal')
  expect(html.match(/href="[^"]*"/g)).toEqual(['href="/builds/c/"'])
})

test('a circle is broken at its first slug, each in it told once', () => {
  const {rows, isCircle} = families(journal({c: 'b', b: 'a', a: 'c', d: 'a'}))('c')
  expect(isCircle).toBe(true)
  expect(rows.map(({slug}) => slug)).toEqual(['a', 'b', 'c', 'd'])
  expect(told('e', {e: 'e'})).toEqual(['0 e'])
})

test('forty copies each have a row and a link, and a long line stays on the page', () => {
  const copies = Object.fromEntries(Array.from({length: 40}, (_, at) => [`copy-${at}`, 'first']))
  const many = families(journal({first: undefined, ...copies}))('first')
  expect([many.rows.length, many.more]).toEqual([41, 0])
  expect(toHtml(familyTree(many.rows, 'first')).match(/<a href/g)).toHaveLength(40)
  const line = Object.fromEntries(
    Array.from({length: 3000}, (_, at) => [`b${at}`, at ? `b${at - 1}` : undefined]),
  )
  const long = families(journal(line))('b0')
  expect([long.rows.length, long.more]).toEqual([100, 2900])
  const width = Number(/width="(\d+)"/.exec(toHtml(familyTree(long.rows, 'b0')))![1])
  expect(width).toBeLessThan(358)
})
