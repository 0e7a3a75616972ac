import {describe, expect, test} from 'vitest'
import {readBuild, readRack} from '../../plugins/build-file/read.ts'
import type {Context} from '../../plugins/plan/context.ts'
import {type Plan, planBuild} from '../../plugins/plan/plan.ts'
import {offcutName, piecesOn, rackOf, throughRack} from '../../plugins/plan/rack.ts'
import {printedPlan} from '../../plugins/words/printed-plan.ts'

const rack = `
- {id: A4, wood: beech, length: 40, width: 3, thickness: 3/4}
- {id: B1, wood: beech, length: 30, width: 3, thickness: 3/4, count: 2}
- {id: C1, wood: beech, length: 30, width: 3, thickness: 3/4, bought: 2026-03-01}
`
const build = (slug: string, frontMatter: string) =>
  readBuild(`---\ntitle: ${slug}\nsaw: {kerf: 1/8, trim: 1/2}\n${frontMatter.trim()}\n---\n`, {
    slug,
    journal: {},
  }).build

const rail = 'parts: [{name: rail, wood: beech, length: 20, width: 1, thickness: 1/2}]'

async function lead(...builds: ReturnType<typeof build>[]) {
  const plans = new Map<string, {plan: Plan; context: Omit<Context, 'journal'>}>()
  const start = rackOf(readRack(rack, {}).pieces)
  const rackLeft = await throughRack(start, builds, async (one, context) => {
    const plan = planBuild(one, {journal: {}, ...context})
    plans.set(one.slug, {plan, context})
    return plan.cuts
  })
  return {rackLeft, of: (slug: string) => plans.get(slug)!}
}

describe('the rack', () => {
  test('a piece keeps what its file tells of it, and what it cost', async () => {
    const noted =
      '- {id: A4, wood: beech, length: 40, width: 3, thickness: 3/4, cost: 7, bought: 2026-01-01, remark: old rail}'
    const start = rackOf(readRack(noted, {}).pieces)
    let plan: Plan | undefined
    await throughRack(
      start,
      [build('one', `started: 2026-01-02\ntake: [A4]\n${rail}`)],
      async (one, context) => {
        plan = planBuild(one, {journal: {}, ...context})
        return plan.cuts
      },
    )
    expect(plan!.cuts!.pieces[0]).toMatchObject({id: 'A4', bought: '2026-01-01', remark: 'old rail'})
    expect(printedPlan(plan!).bill).toContainEqual({
      item: 'beech, A4',
      count: 1,
      each: 7,
      total: 7,
      from: 'stock',
    })
  })

  test('builds take their wood in the order they were started, then by slug', async () => {
    const take = (slug: string, day: string) => build(slug, `started: ${day}\ntake: [A4]\n${rail}`)
    const {of} = await lead(
      take('zinc', '2026-01-02'),
      take('beacon', '2026-01-02'),
      take('anchor', '2026-01-03'),
    )
    expect(of('beacon').plan.cuts).toMatchObject({used: 1})
    expect(of('zinc').plan.stockTroubles).toMatchObject([{kind: 'cut', id: 'A4', by: 'beacon'}])
    expect(of('anchor').plan.stockTroubles).toMatchObject([{kind: 'cut', id: 'A4', by: 'beacon'}])
  })

  test('offcuts go back under new names by falling length, for later builds only', async () => {
    const {rackLeft, of} = await lead(
      build('second', `started: 2026-01-05\ntake: [A4-a]\n${rail}`),
      build('first', `started: 2026-01-02\ntake: [A4]\n${rail}`),
    )
    const first = of('first').plan.cuts!.pieces[0]!
    expect(first.offcuts.map(({lengthMm, widthMm}) => [lengthMm / 25.4, widthMm / 25.4])).toEqual([
      [expect.closeTo(39, 6), expect.closeTo(1.875, 6)],
      [expect.closeTo(18.875, 6), expect.closeTo(1, 6)],
    ])
    expect(of('second').plan.cuts!.pieces[0]!.id).toBe('A4-a')
    const ids = rackLeft.pieces.map(({id}) => id)
    expect(ids).toContain('A4-b')
    expect(ids).toContain('A4-a-a')
    expect(ids).not.toContain('A4')
    expect(ids).not.toContain('A4-a')
  })

  test('an offcut taken before its piece is cut is not there yet', async () => {
    const {of} = await lead(build('early', `started: 2026-01-01\ntake: [A4-a]\n${rail}`))
    expect(of('early').plan.stockTroubles).toMatchObject([{kind: 'later', id: 'A4-a'}])
  })

  test('offcuts of a build’s own stock carry its name', async () => {
    const {rackLeft} = await lead(
      build(
        'lamp',
        `started: 2026-01-02\n${rail}\nstock: [{id: S1, wood: beech, length: 40, width: 1, thickness: 3/4}]`,
      ),
    )
    expect(rackLeft.pieces.at(-1)).toMatchObject({id: 'lamp.S1-a', from: {build: 'lamp', piece: 'S1'}})
  })

  test('a piece taken and not cut stays under its id', async () => {
    const {rackLeft} = await lead(build('one', `started: 2026-01-02\ntake: [A4, B1]\n${rail}`))
    const ids = rackLeft.pieces.map(({id}) => id)
    // Of pieces that serve alike the least volume is cut: one of the two B1.
    expect(ids).toEqual(expect.arrayContaining(['A4', 'B1.2']))
    expect(ids).not.toContain('B1.1')
  })

  test('an idea reserves nothing, and wood without a date is an error', async () => {
    const {rackLeft, of} = await lead(
      build('idea', `status: idea\nstarted: 2026-01-02\ntake: [A4]\n${rail}`),
      build('undated', `take: [A4]\n${rail}`),
    )
    expect(of('idea').plan.cuts!.used).toBe(1)
    expect(rackLeft.pieces.map(({id}) => id)).toContain('A4')
    expect(of('undated').plan.stockTroubles).toMatchObject([{kind: 'undated'}])
  })

  test('a piece is there from the day it was bought', async () => {
    const {of, rackLeft} = await lead(
      build('before', `started: 2026-02-28\ntake: [C1]\n${rail}`),
      build('after', `started: 2026-03-01\ntake: [C1]\n${rail}`),
    )
    expect(of('before').plan.stockTroubles).toMatchObject([{kind: 'later', on: '2026-03-01'}])
    expect(of('after').plan.cuts!.used).toBe(1)
    expect(piecesOn(rackLeft, '2026-02-01').map(({id}) => id)).toEqual(['A4', 'B1.1', 'B1.2'])
  })
})

test('offcuts are named like columns of a sheet', () => {
  expect([0, 1, 25, 26, 27, 51, 52, 701, 702].map(offcutName)).toEqual([
    'a',
    'b',
    'z',
    'aa',
    'ab',
    'az',
    'ba',
    'zz',
    'aaa',
  ])
})
