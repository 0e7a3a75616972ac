import {describe, expect, test} from 'vitest'
import {boardFeet, boardsFor} from '../../../plugins/plan/stock/to-buy.ts'
import {hardwoodThicknesses, softwoodThicknesses, softwoodWidths} from '../../../plugins/tables/lumber.ts'
import {printedPlan} from '../../../plugins/words/printed-plan.ts'
import {planOf, printedOf} from '../../support/plan-of.ts'

const inch = 25.4
const dressed = (rows: readonly {nominal: string; mm: number}[]) =>
  Object.fromEntries(rows.map(({nominal, mm}) => [nominal, Number((mm / inch).toFixed(9))]))

describe('sizes that boards are sold in', () => {
  // American Softwood Lumber Standard, PS 20, minimum dressed dry sizes, as printed in an engineering reference.
  test('softwood', () => {
    expect(dressed(softwoodThicknesses)).toEqual({
      '1': 0.75,
      '5/4': 1,
      '6/4': 1.25,
      '2': 1.5,
      '3': 2.5,
      '4': 3.5,
    })
    expect(dressed(softwoodWidths)).toEqual({
      '2': 1.5,
      '3': 2.5,
      '4': 3.5,
      '5': 4.5,
      '6': 5.5,
      '8': 7.25,
      '10': 9.25,
      '12': 11.25,
    })
  })

  // The standard's rule: widths up to 7 in lose 1/2 in, wider ones 3/4 in.
  test('widths follow the rule', () => {
    for (const {nominal, mm} of softwoodWidths)
      expect(mm / inch).toBeCloseTo(Number(nominal) - (Number(nominal) < 8 ? 0.5 : 0.75), 9)
  })

  // NHLA rules, surfaced two sides.
  test('hardwood', () => {
    expect(dressed(hardwoodThicknesses)).toMatchObject({'4/4': 0.8125, '5/4': 1.0625, '8/4': 1.75})
  })

  // American Hardwood Export Council on the NHLA rules: 1 × 9 × 96 in is 6 board feet, 1 1/2 × 9 × 96 in 9.
  test('board feet', () => {
    expect(boardFeet({lengthMm: 96 * inch, widthMm: 9 * inch, thicknessIn: 1})).toBeCloseTo(6, 12)
    expect(boardFeet({lengthMm: 96 * inch, widthMm: 9 * inch, thicknessIn: 1.5})).toBeCloseTo(9, 12)
    expect(boardFeet({lengthMm: 96 * inch, widthMm: 9 * inch, thicknessIn: 0.5})).toBeCloseTo(6, 12)
  })

  test('boards are thick enough by the least, and none is offered where none is', () => {
    expect(new Set(boardsFor('softwood', 0.8 * inch).map(({thicknessMm}) => thicknessMm))).toEqual(
      new Set([inch]),
    )
    expect(boardsFor('hardwood', 3 * inch)).toEqual([])
  })
})

describe('what to buy', () => {
  const bought = (parts: string) =>
    printedOf(`title: a\nsaw: {kerf: 1/8, trim: 1/2}\nparts:\n${parts}`).cuts!.bought

  test('the smallest single board that gives all parts of a wood and thickness', () => {
    expect(
      bought(`  - {name: rail, wood: eastern white pine, length: 30, width: 1 1/4, thickness: 3/4, count: 2}
  - {name: foot, wood: eastern white pine, length: 10, width: 1 1/2, thickness: 1 1/2}`),
    ).toMatchObject([
      {size: '1 × 2, 6 ft', count: 1, wood: 'eastern white pine'},
      {size: '2 × 2, 4 ft', count: 1},
    ])
  })

  test('hardwood by the board foot', () => {
    const [board] = bought('  - {name: rail, wood: black walnut, length: 30, width: 3, thickness: 3/4}')
    expect(board).toMatchObject({size: '4/4, 4 in wide, 4 ft', count: 1})
    expect(board!.boardFeet).toBeCloseTo(4 / 3, 12)
  })

  test('several boards where one does not hold them: as few as can be', () => {
    const [board] = bought('  - {name: rail, wood: pine, length: 100, width: 11, thickness: 3/4, count: 3}')
    expect(board).toMatchObject({count: 3, size: '1 × 12, 10 ft'})
  })
})

describe('nearest piece and what it lacks', () => {
  const cutsOf = (text: string) => printedPlan(planOf(text).plan).cuts
  const lacks = (part: string, stock: string) =>
    cutsOf(`title: a\nsaw: {kerf: 1/8, trim: 1/2}\nparts: [{name: rail, ${part}}]\nstock: [${stock}]`)!
      .unplaced[0]

  const a1 = '{id: A1, wood: beech, length: 20, width: 3, thickness: 3/4}'
  const a2 = '{id: A2, wood: teak, length: 90, width: 9, thickness: 3}'
  test.each([
    [
      'wood: beech, length: 19 1/16, width: 1, thickness: 1/2',
      a1,
      {nearest: 'A1', lacks: '1/16 in of length'},
    ],
    [
      'wood: beech, length: 19, width: 3 1/32, thickness: 1',
      a1,
      {nearest: 'A1', lacks: '1/32 in of width and 1/4 in of thickness'},
    ],
    [
      'wood: beech, length: 21, width: 1, thickness: 1/2',
      `${a2}, ${a1}`,
      {nearest: 'A1', lacks: '2 in of length'},
    ],
    [
      'wood: ash, length: 9, width: 1, thickness: 1/2',
      a1,
      {nearest: 'A1', lacks: 'the right wood: it is beech, not ash'},
    ],
  ])('%s', (part, stock, expected) => {
    expect(lacks(part, stock)).toMatchObject(expected)
  })

  test('where every piece is taken up by other parts it lacks room', () => {
    const cuts = cutsOf(`title: a
parts: [{name: rail, wood: beech, length: 15, width: 3, thickness: 1/2, count: 2}]
stock: [${a1}]`)
    expect(cuts).toMatchObject({
      proven: true,
      unplaced: [{nearest: 'A1', lacks: 'room beside the other parts'}],
    })
  })
})

test('for thousands of parts as many boards are bought as the first attempt fills, which is no less than their area', () => {
  const parts = Array.from(
    {length: 2500},
    (_, i) => `  - {name: a${i}, wood: ash, length: 10, width: ${1 + (i % 5) / 4}, thickness: 3/4}`,
  )
  const [bought] = planOf(`title: A\nsaw: {kerf: 1/8}\nparts:\n${parts.join('\n')}`).plan.cuts!.bought
  const area = parts.reduce((sum, _, i) => sum + 10 * (1 + (i % 5) / 4), 0) * inch * inch
  expect(bought!.count * bought!.lengthMm * bought!.widthMm).toBeGreaterThan(area)
  // Common practice, no source: a plain first fit of small parts loses less than a fourth.
  expect(bought!.count * bought!.lengthMm * bought!.widthMm).toBeLessThan(1.25 * area)
})
