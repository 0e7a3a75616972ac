import {describe, expect, test} from 'vitest'
import {readBuild, readRack} from '../../../plugins/build-file/read.ts'
import type {Context} from '../../../plugins/plan/kit/context.ts'
import {type Plan, planBuild} from '../../../plugins/plan/plan.ts'
import type {CutPiece, Cuts} from '../../../plugins/plan/stock/cut-list.ts'
import {sharesOf} from '../../../plugins/plan/stock/ledger.ts'
import {offcutName, rackOf, standingOn, throughRack} from '../../../plugins/plan/stock/rack.ts'
import {printedPlan} from '../../../plugins/words/printed-plan.ts'
import fc from '../../support/properties.ts'

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
    return plan
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
        return plan
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

  test('a piece is there from the day it was bought', async () => {
    const {of, rackLeft} = await lead(
      build('before', `started: 2026-02-28\ntake: [C1]\n${rail}`),
      build('after', `started: 2026-03-01\ntake: [C1]\n${rail}`),
    )
    expect(of('before').plan.stockTroubles).toMatchObject([{kind: 'later', on: '2026-03-01'}])
    expect(of('after').plan.cuts!.used).toBe(1)
    expect(standingOn(rackLeft, '2026-02-01').pieces.map(({id}) => id)).toEqual(['A4', 'B1.1', 'B1.2'])
  })
})

describe('one board, wherever it is listed', () => {
  const own = (id: string, size = 'length: 40, width: 3, thickness: 3/4') =>
    `stock: [{id: ${id}, wood: beech, ${size}}]\n${rail}`

  test('a board of the rack under stock is taken from the rack, and its offcuts go back by its name', async () => {
    const {of, rackLeft} = await lead(
      build('one', `started: 2026-01-02\n${own('A4')}`),
      build('two', `started: 2026-01-03\n${own('A4')}`),
      build('three', `started: 2026-01-04\ntake: [A4]\n${rail}`),
    )
    expect(of('one').plan.stockTroubles).toBeUndefined()
    expect(of('two').plan.stockTroubles).toMatchObject([{kind: 'cut', at: 'stock.1.id', by: 'one'}])
    expect(of('three').plan.stockTroubles).toMatchObject([{kind: 'cut', at: 'take.1', by: 'one'}])
    const ids = rackLeft.pieces.map(({id}) => id)
    expect(ids.filter((id) => id.startsWith('A4'))).toEqual(['A4-a', 'A4-b'])
    expect(ids).toContain('two.A4-a')
  })

  test('both must agree in size, and the size of the rack would do', async () => {
    const {of} = await lead(
      build('one', `started: 2026-01-02\n${own('A4', 'length: 40, width: 2 1/2, thickness: 3/4')}`),
    )
    const inch = 25.4
    expect(of('one').plan.stockTroubles).toMatchObject([
      {kind: 'differs', at: 'stock.1.width', size: 'width', mm: expect.closeTo(3 * inch, 9)},
    ])
    const same = await lead(
      build('one', `started: 2026-01-02\n${own('A4', 'length: 1016 mm, width: 76.2 mm, thickness: 3/4')}`),
    )
    expect(same.of('one').plan.stockTroubles).toBeUndefined()
  })

  test('listed by its name alone it has the sizes of the rack', async () => {
    const {of} = await lead(build('one', `started: 2026-01-02\nstock: [{id: A4}, {id: A5}]\n${rail}`))
    expect(of('one').plan.stockTroubles).toMatchObject([{kind: 'unsized', id: 'A5', size: 'length'}])
    const taken = await lead(build('one', `started: 2026-01-02\ntake: [A4]\n${rail}`))
    expect(of('one').plan.cuts!.pieces).toEqual(taken.of('one').plan.cuts!.pieces)
  })

  test('under stock and taken it is cut once', async () => {
    const {of} = await lead(build('one', `started: 2026-01-02\ntake: [A4]\n${own('A4')}`))
    expect(of('one').plan.cuts!.pieces.map(({id}) => id)).toEqual(['A4'])
  })
})

describe('what is not started reserves', () => {
  test('an idea and a build without a day are told of each other, and leave the rack as it is', async () => {
    const {of, rackLeft} = await lead(
      build('idea', `started: 2026-01-01\nstatus: idea\ntake: [A4]\n${rail}`),
      build('undated', `take: [A4]\n${rail}`),
      build('other', `take: [B1]\n${rail}`),
    )
    expect(of('idea').plan.stockTroubles).toMatchObject([{kind: 'reserved', at: 'take.1', by: 'undated'}])
    expect(of('undated').plan.stockTroubles).toMatchObject([{kind: 'reserved', by: 'idea'}])
    expect(of('other').plan.stockTroubles).toBeUndefined()
    expect(of('undated').plan.cuts!.pieces.map(({id}) => id)).toEqual(['A4'])
    expect(rackLeft.pieces.map(({id}) => id)).toEqual(['A4', 'B1.1', 'B1.2', 'C1'])
  })

  test('a build that is started takes what another one reserves', async () => {
    const {of} = await lead(
      build('idea', `take: [A4]\n${rail}`),
      build('started', `started: 2026-01-02\ntake: [A4]\n${rail}`),
    )
    expect(of('started').plan.stockTroubles).toBeUndefined()
    expect(of('idea').plan.stockTroubles).toMatchObject([{kind: 'cut', by: 'started'}])
  })
})

describe('hardware and strings on the rack', () => {
  const shelf = `
- {id: TU, item: tuners, count: 4, cost: 2.10, bought: 2026-01-01}
- {id: ST, item: set of strings, count: 2, cost: 8}
- {id: W30, item: wound string .030w, count: 5, cost: 1.50}
- {id: OIL, item: jar of oil, count: 2, cost: 6}
`
  const three = (day: string, take: string) => `started: ${day}
scale: 24 1/4
strings: [D3 .030w, A3 .020w, D4 .013]
tuners: {button: 1/2}
take: [${take}]`
  const leadPast = async (...builds: ReturnType<typeof build>[]) => {
    const plans = new Map<string, Plan>()
    const left = await throughRack(rackOf(readRack(shelf, {}).pieces), builds, async (one, context) => {
      const plan = planBuild(one, {journal: {}, ...context})
      plans.set(one.slug, plan)
      return plan
    })
    const rows = (slug: string) =>
      printedPlan(plans.get(slug)!).bill!.map(({item, count, total, from}) => [item, count, total, from])
    return {plans, rows, left: left.lots.map(({id, count}) => [id, count])}
  }

  test('a build takes as many as it needs, and what a lot lacks is still to be got', async () => {
    const {rows, left} = await leadPast(
      build('one', three('2026-01-02', 'TU, W30, OIL')),
      build('two', three('2026-01-03', 'TU, ST')),
    )
    expect(rows('one').slice(0, 3)).toEqual([
      ['tuners', 3, 6.3, 'stock'],
      ['wound string .030w', 1, 1.5, 'stock'],
      ['jar of oil', 1, 6, 'stock'],
    ])
    expect(rows('one').filter(([, , , from]) => from === 'strings')).toHaveLength(2)
    expect(rows('two').slice(0, 2)).toEqual([
      ['tuners', 1, 2.1, 'stock'],
      ['set of strings', 1, 8, 'stock'],
    ])
    expect(rows('two').filter(([, , , from]) => from === 'strings')).toEqual([])
    expect(rows('two').filter(([, , , from]) => from === 'tuners')).toMatchObject([
      [expect.anything(), 2, undefined, 'tuners'],
    ])
    expect(left).toEqual([
      ['ST', 1],
      ['W30', 4],
      ['OIL', 1],
    ])
  })

  test('of what every string has one of, as many as there are strings; what would do is told', async () => {
    const {rows, plans, left} = await leadPast(
      build('one', 'started: 2026-01-02\nstatus: strung up\nstrings: 3\ntake: [TU]'),
      build('two', three('2026-01-03', 'OIL')),
    )
    expect(rows('one')[0]).toEqual(['tuners', 3, 6.3, 'stock'])
    expect(left).toContainEqual(['TU', 1])
    expect(plans.get('two')!.bill!.find(({from}) => from === 'tuners')).toMatchObject({
      count: 3,
      atHand: 'TU',
    })
  })

  test('what is used up is gone, what comes later is not there, and a slip finds what was meant', async () => {
    const {plans} = await leadPast(
      build('one', three('2026-01-02', 'TU')),
      build('two', three('2026-01-03', 'TU')),
      build('three', three('2026-01-04', 'TU')),
      build('early', three('2025-12-31', 'TU, STT')),
    )
    expect(plans.get('three')!.stockTroubles).toMatchObject([{kind: 'cut', id: 'TU', by: 'two'}])
    expect(plans.get('early')!.stockTroubles).toMatchObject([
      {kind: 'later', id: 'TU', on: '2026-01-01'},
      {kind: 'unknown', id: 'STT', nearest: 'ST'},
    ])
  })
})

describe('the rack balances', () => {
  const inches = fc.integer({min: 8, max: 384}).map((eighths) => eighths / 8)
  const board = fc.record({length: inches, width: fc.integer({min: 8, max: 48}).map((n) => n / 8)})
  const wanted = fc.record({length: inches, width: fc.integer({min: 4, max: 24}).map((n) => n / 8)})
  const job = fc.record({
    parts: fc.array(wanted, {minLength: 1, maxLength: 4}),
    takes: fc.array(fc.nat({max: 3}), {minLength: 1, maxLength: 3}),
    offcut: fc.boolean(),
    isIdea: fc.boolean(),
  })

  /** Of a board nothing is cut twice: parts and offcuts lie on it, at least a kerf apart. */
  function liesApart({strips, offcuts, lengthMm, widthMm}: CutPiece, {kerfMm}: Cuts) {
    const cuts = strips.flatMap(({acrossMm, cuts: all}) => all.map((cut) => ({...cut, acrossMm})))
    const areas = [...cuts, ...offcuts].map((one) => ({
      along: [one.atMm, one.atMm + one.lengthMm] as const,
      across: [one.acrossMm, one.acrossMm + one.widthMm] as const,
    }))
    for (const [at, {along, across}] of areas.entries()) {
      expect([along[0] >= -1e-6, across[0] >= -1e-6]).toEqual([true, true])
      expect([along[1] <= lengthMm + 1e-6, across[1] <= widthMm + 1e-6]).toEqual([true, true])
      for (const other of areas.slice(at + 1)) {
        const gaps = (['along', 'across'] as const).flatMap((way) => {
          const [a, b] = way === 'along' ? [along, other.along] : [across, other.across]
          return [b[0] - a[1], a[0] - b[1]]
        })
        expect(Math.max(...gaps)).toBeGreaterThanOrEqual(kerfMm - 1e-6)
      }
    }
  }

  test('what was bought is what was cut out of it, saw dust and waste, offcuts, and what still stands', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(board, {minLength: 4, maxLength: 4}),
        fc.array(job, {minLength: 1, maxLength: 4}),
        async (boards, jobs) => {
          const listed = boards
            .map(
              ({length, width}, i) =>
                `- {id: R${i}, wood: beech, length: ${length}, width: ${width}, thickness: 3/4}`,
            )
            .join('\n')
          const builds = jobs.map(({parts, takes, offcut, isIdea}, i) => {
            const ids = [...new Set(takes.map((at) => (offcut ? `R${at}-a` : `R${at}`)))]
            const rows = parts.map(
              ({length, width}, k) =>
                `{name: p${k}, wood: beech, length: ${length}, width: ${width}, thickness: 3/4}`,
            )
            return build(
              `b${i}`,
              `${isIdea ? '' : `started: 2026-01-0${i + 1}\n`}take: [${ids.join(', ')}]\nparts: [${rows.join(', ')}]`,
            )
          })
          const start = rackOf(readRack(listed, {}).pieces)
          let used = 0
          const left = await throughRack(start, builds, async (one, context) => {
            const plan = planBuild(one, {journal: {}, ...context})
            if (one.values.started)
              for (const piece of plan.cuts?.pieces ?? []) {
                liesApart(piece, plan.cuts!)
                const {parts, kept, saw, waste} = sharesOf(piece, plan.cuts!)
                expect(Math.min(parts, kept, saw, waste)).toBeGreaterThanOrEqual(-1e-6)
                used += parts + saw + waste
              }
            return plan
          })
          const sum = (pieces: readonly {lengthMm: number; widthMm: number}[]) =>
            pieces.reduce((all, {lengthMm, widthMm}) => all + lengthMm * widthMm, 0)
          expect(used + sum(left.pieces)).toBeCloseTo(sum(start.pieces), 6)
          const ids = [...left.pieces.map(({id}) => id), ...left.gone.map(({id}) => id)]
          expect(new Set(ids).size).toBe(ids.length)
        },
      ),
      {numRuns: 60},
    )
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
