import {expect, test} from 'vitest'
import {cutStock} from '../../plugins/cut-stock/cut-stock.ts'
import {cutPlanFaults} from './cut-plan-faults.ts'
import {numbers} from './random-cutting.ts'
import {rods} from './rods.ts'
import '../support/slow.ts'

const saw = {kerfMm: 3, trimMm: 0}
const part = {id: 'rail', wood: 'beech', lengthMm: 300, widthMm: 20, thicknessMm: 10}
const piece = {id: 'A1', wood: 'beech', lengthMm: 600, widthMm: 20, thicknessMm: 10}

test('a negative kerf is none', () => {
  const {parts, pieces} = rods(600, [[300, 2]])
  expect(cutStock(parts, pieces, {kerfMm: -3, trimMm: -1}).used).toBe(1)
  expect(cutStock(parts, pieces, {kerfMm: 0, trimMm: 0}).used).toBe(1)
  expect(cutStock(parts, pieces, {kerfMm: 0.01, trimMm: 0}).used).toBe(2)
})

test('a part longer than any piece, and one of a wood that nobody has, stay unplaced', () => {
  const parts = [part, {...part, id: 'long', lengthMm: 601}, {...part, id: 'rare', wood: 'moonwood'}]
  expect(cutStock(parts, [piece], saw)).toMatchObject({used: 1, unplaced: ['long', 'rare'], proven: true})
})

test('no stock, no parts, nothing at all', () => {
  expect(cutStock([part], [], saw)).toMatchObject({
    used: 0,
    bound: 0,
    unplaced: ['rail'],
    proven: true,
    wasteFraction: 0,
  })
  expect(cutStock([], [piece], saw)).toMatchObject({used: 0, unplaced: []})
  expect(cutStock([], [], saw)).toMatchObject({used: 0, unplaced: []})
})

test('a piece thinner than the kerf, or shorter than what is squared off it', () => {
  const thin = {...piece, thicknessMm: 2, widthMm: 2.5}
  expect(cutStock([{...part, thicknessMm: 2, widthMm: 2.5}], [thin], saw)).toMatchObject({
    used: 1,
    unplaced: [],
  })
  expect(
    cutStock([{...part, lengthMm: 10}], [{...piece, lengthMm: 24}], {kerfMm: 3, trimMm: 12.7}).unplaced,
  ).toEqual(['rail'])
  expect(cutStock([{...part, lengthMm: 10}], [{...piece, clearMm: [500, 100]}], saw).unplaced).toEqual([
    'rail',
  ])
})

test('sizes that are no sizes are left out', () => {
  const odd = [Number.NaN, 0, -5, 1e300, Number.POSITIVE_INFINITY].map((lengthMm, i) => ({
    ...part,
    id: `odd ${i}`,
    lengthMm,
  }))
  expect(cutStock([part, ...odd], [piece, {...piece, lengthMm: Number.NaN}], saw)).toMatchObject({used: 1})
})

test('ten thousand parts of ten thousand lengths are all cut, and nothing is said to be proven that is not', () => {
  const random = numbers(1)
  const {parts, pieces} = rods(
    2400,
    Array.from({length: 10_000}, () => [80 + random() * 820, 1] as const),
  )
  const plan = cutStock(parts, pieces.slice(0, 2500), saw)
  expect(plan.unplaced).toEqual([])
  expect(plan.used).toBeGreaterThanOrEqual(plan.bound)
  expect(plan.used).toBeLessThan(1.02 * plan.bound)
})

test('hundreds of parts and boards that are all of other sizes are cut, and it is said that the search was stopped', () => {
  const random = numbers(2)
  const sized = (i: number, [least, most]: readonly [number, number]) => ({
    ...part,
    id: `one ${i}`,
    lengthMm: least + random() * (most - least),
    widthMm: (least + random() * (most - least)) / 8,
  })
  const parts = Array.from({length: 260}, (_, i) => sized(i, [100, 400]))
  const pieces = Array.from({length: 260}, (_, i) => sized(i, [500, 900]))
  const plan = cutStock(parts, pieces, saw)
  expect(plan).toMatchObject({proven: false, unplaced: []})
  expect(cutPlanFaults(plan, parts, pieces, saw)).toEqual([])
})

test('ten thousand parts of five lengths are proven', () => {
  const {parts, pieces} = rods(2400, [
    [130, 1999],
    [420, 2001],
    [530, 2000],
    [610, 1998],
    [725, 2002],
  ])
  const plan = cutStock(parts, pieces, saw)
  expect(plan).toMatchObject({proven: true, unplaced: []})
  expect(
    cutPlanFaults(
      {...plan, pieces: plan.pieces.slice(0, 0), unplaced: parts.map(({id}) => id)},
      parts,
      pieces,
      saw,
    ),
  ).toEqual([])
})

test('parts that fill a piece exactly fit, in thirds of an inch and with kerfs of an eighth', () => {
  const inch = 25.4
  const third = {...part, widthMm: (5 / 3) * inch}
  const parts = ['a', 'b', 'c'].map((id) => ({...third, id, lengthMm: (9 + 3 / 16) * inch}))
  const board = {...piece, widthMm: 5.25 * inch, lengthMm: (9 + 3 / 16) * inch}
  expect(cutStock(parts, [board], {kerfMm: inch / 8, trimMm: 0})).toMatchObject({
    used: 1,
    unplaced: [],
    proven: true,
  })
  const narrower = {...board, widthMm: 5.25 * inch - 0.001}
  expect(cutStock(parts, [narrower], {kerfMm: inch / 8, trimMm: 0}).unplaced).toHaveLength(1)
})
