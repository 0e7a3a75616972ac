import {describe, expect, test} from 'vitest'
import {cutStock} from '../../plugins/cut-stock/cut-stock.ts'
import {cutPlanFaults} from './cut-plan-faults.ts'
import {numbers} from './random-cutting.ts'
import {rods} from './rods.ts'
import '../support/slow.ts'

/** Cut a length into so many parts that fill it with their kerfs to the last mark. */
function cutUp(
  random: () => number,
  lengthMm: number,
  count: number,
  kerfMm: number,
  markMm: number,
): number[] {
  const parts: number[] = []
  let rest = lengthMm + kerfMm
  for (let left = count; left > 1; left--) {
    const part = Math.max(2, Math.round(((rest / left) * (0.4 + 1.2 * random()) - kerfMm) / markMm)) * markMm
    parts.push(part)
    rest -= part + kerfMm
  }
  return [...parts, rest - kerfMm]
}

const inch = 25.4
const cases = [
  {name: '12 pieces of 2400 mm', stock: [[2400, 12]], each: 5, kerf: 3, mark: 1, trim: 0},
  {name: '20 pieces of 1000 mm without a kerf', stock: [[1000, 20]], each: 3, kerf: 0, mark: 1, trim: 0},
  {
    name: '15 boards of 96 in',
    stock: [[96 * inch, 15]],
    each: 4,
    kerf: inch / 8,
    mark: inch / 16,
    trim: inch / 2,
  },
  {
    name: 'three lengths',
    stock: [
      [96 * inch, 5],
      [72 * inch, 5],
      [48 * inch, 5],
    ],
    each: 4,
    kerf: inch / 8,
    mark: inch / 16,
    trim: 0,
  },
] as const

describe('60 parts that fill every piece to the last mark', () => {
  test.each(cases)('$name', ({stock, each, kerf, mark, trim}) => {
    for (const seed of [1, 2, 3]) {
      const random = numbers(seed)
      const lengths = stock.flatMap(([lengthMm, count]) =>
        Array.from({length: count}, () => cutUp(random, lengthMm - 2 * trim, each, kerf, mark)).flat(),
      )
      const shuffled = lengths.map((length) => ({length, at: random()})).sort((a, b) => a.at - b.at)
      const {parts, pieces} = rods(
        stock,
        shuffled.map(({length}) => [length, 1]),
      )
      const saw = {kerfMm: kerf, trimMm: trim}
      const plan = cutStock(parts, pieces, saw)
      expect(parts).toHaveLength(60)
      expect(plan).toMatchObject({used: pieces.length, bound: pieces.length, proven: true, unplaced: []})
      expect(cutPlanFaults(plan, parts, pieces, saw)).toEqual([])
    }
  })

  test('five boards ripped into strips of three widths, each strip filled', () => {
    const random = numbers(4)
    const widths = [
      [20, 30, 45],
      [45, 51],
      [20, 20, 52],
      [30, 30, 35],
      [47, 49],
    ]
    const parts = widths.flatMap((own, b) =>
      own.flatMap((widthMm, s) =>
        cutUp(random, 1180, s === 0 ? 5 : 4, 3, 1).map((lengthMm, k) => ({
          id: `${b} ${s} ${k}`,
          wood: 'ash',
          lengthMm,
          widthMm,
          thicknessMm: 10,
        })),
      ),
    )
    const pieces = Array.from({length: 7}, (_, i) => ({
      id: `piece ${i + 1}`,
      wood: 'ash',
      lengthMm: 1200,
      widthMm: 101,
      thicknessMm: 10,
    }))
    const saw = {kerfMm: 3, trimMm: 10}
    const plan = cutStock(parts, pieces, saw)
    expect(plan).toMatchObject({used: 5, bound: 5, proven: true, unplaced: []})
    expect(cutPlanFaults(plan, parts, pieces, saw)).toEqual([])
  })
})

test('13 lengths and over 200 parts come out proven, whatever the lengths', () => {
  for (const seed of [1, 2, 3, 4, 5, 6]) {
    const random = numbers(seed)
    const demand = Array.from(
      {length: 13},
      () => [Math.round((10 + 45 * random()) * 8) * (inch / 8), 8 + Math.floor(random() * 25)] as const,
    )
    const {parts, pieces} = rods(96 * inch, demand)
    const saw = {kerfMm: inch / 8, trimMm: 0}
    const plan = cutStock(parts, pieces, saw)
    expect(parts.length).toBeGreaterThan(150)
    expect(plan).toMatchObject({proven: true, unplaced: []})
    expect(plan.used).toBe(plan.bound)
    expect(cutPlanFaults(plan, parts, pieces, saw)).toEqual([])
  }
})

test('of twelve cuttings of 60 parts from three lengths eleven at least are proven, the others within 1 %', () => {
  const gaps = Array.from({length: 12}, (_, seed) => {
    const random = numbers(seed + 100)
    const stock = [
      [2400, 20],
      [1800, 20],
      [1200, 20],
    ] as const
    const demand = Array.from({length: 60}, () => [80 + Math.floor(random() * 820), 1] as const)
    const {parts, pieces} = rods(stock, demand)
    const plan = cutStock(parts, pieces, {kerfMm: 3, trimMm: 0})
    expect(plan.unplaced).toEqual([])
    return plan.gapFraction
  })
  expect(gaps.filter((gap) => gap > 0).length).toBeLessThanOrEqual(1)
  expect(Math.max(...gaps)).toBeLessThan(0.01)
})
