import {expect, test} from 'vitest'
import {mendText} from '../../plugins/build-file/heal/mend.ts'
import {heal, manyBuilds, readOnly} from '../support/slip-healing.ts'
import {randomFrom, slipped} from '../support/slips.ts'
import '../support/slow.ts'

/*
 * A maker's file with one to six slips: what the command writes by itself, and one round of pasting what it proposes,
 * give the plan of the file without slips to the last digit. The plan of the unslipped file is the judge.
 */

const seed = Number(process.env.SLIPS_SEED ?? 20260307)
const count = Number(process.env.SLIPS_COUNT ?? 40)

const builds = manyBuilds()
const tried = Array.from({length: count}, (_, at) => {
  const random = randomFrom(seed + at)
  const meant = builds[Math.floor(random() * builds.length)]!
  const {text, made} = slipped(meant, random)
  return {at, made, text, meant, ...heal(text, meant)}
})
const open = tried.filter(({isHealed}) => !isHealed)
const told = open
  .map(({at, made, left}) => `${seed + at}: ${made.join(', ')}: ${left[0]?.message}`)
  .join('\n')

test(`of ${count} files with slips from seed ${seed}, at least 95 in 100 are healed`, () => {
  expect(open.length, told).toBeLessThanOrEqual(Math.floor(count * 0.05))
})

test('the rest ask: nothing that was meant is lost in silence', () => {
  for (const {made, left} of open)
    expect(
      left.filter(({severity}) => severity !== 'remark'),
      made.join(', '),
    ).not.toEqual([])
})

test('a second run writes nothing', () => {
  for (const {mended} of tried.slice(0, 12))
    expect(mendText(mended, readOnly)).toMatchObject({text: mended, changes: []})
})

test('what was not slipped stays as it was written: comments, order, spacing', () => {
  for (const {text, mended} of tried) {
    const now = new Set(mended.split('\n'))
    const gone = text.split('\n').filter((line) => !now.has(line))
    // At most the lines with slips, and those that belong to them.
    expect(gone.length).toBeLessThanOrEqual(18)
    const remarks = (all: string) => all.match(/ # .*$/gm)?.sort()
    expect(remarks(mended)).toEqual(remarks(text))
  }
})

test('files without slips are left alone, to the byte', () => {
  for (const [at, each] of builds.entries()) {
    const text = at % 3 === 0 ? each : at % 3 === 1 ? each.replaceAll('\n', '\r\n') : `\uFEFF${each}`
    expect(mendText(text, readOnly)).toMatchObject({text, changes: []})
  }
})
