import {describe, expect, test} from 'vitest'
import {cutStock} from '../../plugins/cut-stock/cut-stock.ts'
import {cutPlanFaults} from './cut-plan-faults.ts'
import {rods} from './rods.ts'
import '../support/slow.ts'

// Chvátal, Linear Programming (1983), chapter 13: from memory of the book, data seen in a secondary copy.
const chvatal = {
  stock: 100,
  demand: [
    [45, 97],
    [36, 610],
    [31, 395],
    [14, 211],
  ],
} as const
// Fourer, Gay and Kernighan, AMPL: A Modeling Language for Mathematical Programming, chapter 15, model "cut".
const fourer = {
  stock: 110,
  demand: [
    [20, 48],
    [45, 35],
    [50, 24],
    [55, 10],
    [75, 8],
  ],
} as const
// Rolls of 9, 8, 7 and 6: published with the fractional optimum 600.375, seen in a secondary copy.
const rolls = {
  stock: 20,
  demand: [
    [9, 511],
    [8, 301],
    [7, 263],
    [6, 383],
  ],
} as const
// Falkenauer, u120_00, from Beasley's OR-Library, file binpack1, with the optimum stated there.
const falkenauer =
  '42 69 67 57 93 90 38 36 45 42 33 79 27 57 44 84 86 92 46 38 85 33 82 73 49 70 59 23 57 72 74 69 33 42 28 46 30 64 29 74 41 49 55 98 80 32 25 38 82 30 35 39 57 84 62 50 55 27 30 36 20 78 47 26 45 41 58 98 91 96 73 84 37 93 91 43 73 85 81 79 71 80 76 83 41 78 70 23 42 87 43 84 60 55 49 78 73 62 36 44 94 69 32 96 70 84 58 78 25 80 58 66 83 24 98 60 42 43 43 39'
    .split(' ')
    .map((length) => [Number(length), 1] as const)

// The optima with a kerf were computed with an exact integer program on the arc-flow model.
const cases = [
  {name: 'Chvátal', ...chvatal, kerf: 0, optimum: 453},
  {name: 'Fourer, Gay, Kernighan', ...fourer, kerf: 0, optimum: 47},
  {name: 'Fourer, Gay, Kernighan', ...fourer, kerf: 1, optimum: 50},
  {name: 'Fourer, Gay, Kernighan', ...fourer, kerf: 2, optimum: 51},
  {name: 'Fourer, Gay, Kernighan', ...fourer, kerf: 5, optimum: 53},
  {name: 'rolls of 9, 8, 7 and 6', ...rolls, kerf: 0, optimum: 601},
  {name: 'Falkenauer u120_00', stock: 150, demand: falkenauer, kerf: 0, optimum: 48},
]

describe('published instances', () => {
  test.each(cases)('$name with a kerf of $kerf takes $optimum, proven', ({stock, demand, kerf, optimum}) => {
    const {parts, pieces} = rods(stock, demand)
    const saw = {kerfMm: kerf, trimMm: 0}
    const plan = cutStock(parts, pieces, saw)
    expect(plan).toMatchObject({used: optimum, bound: optimum, proven: true, unplaced: [], gapFraction: 0})
    expect(cutPlanFaults(plan, parts, pieces, saw)).toEqual([])
  })
})
