import {describe, expect, test} from 'vitest'
import {bitOf} from '../../plugins/plan/kit/bits.ts'
import {forstnerIn, forstnerMm, letterDrillsIn, numberDrillsIn} from '../../plugins/tables/drills.ts'
import {screws} from '../../plugins/tables/screws.ts'
import {bareBit} from '../../plugins/words/holes.ts'

const row = (gauge: number) => screws.find((one) => one.gauge === gauge)!

describe('screws', () => {
  test('rise by gauge, each diameter with it', () => {
    for (const [i, later] of screws.slice(1).entries()) {
      const sooner = screws[i]!
      expect(later.gauge).toBeGreaterThan(sooner.gauge)
      expect(later.rootIn).toBeGreaterThan(sooner.rootIn)
      expect(later.threadsPerInch).toBeLessThan(sooner.threadsPerInch)
      expect(later.shankHoleIn).toBeGreaterThanOrEqual(sooner.shankHoleIn)
    }
  })

  // Wood Handbook, FPL-GTR-282, Table 8-9, against ANSI/ASME B18.6.1: 0.060 + 0.013 N.
  test('the handbook’s metric shanks are those of the rule', () => {
    for (const {gauge, shankMm} of screws)
      if (shankMm !== undefined) expect(shankMm).toBeCloseTo((0.06 + 0.013 * gauge) * 25.4, 1)
  })

  // Wood Handbook, FPL-GTR-190, ch. 8, Wood Screws.
  test('the root averages about two thirds of the shank', () => {
    for (const {gauge, rootIn} of screws) expect(rootIn / (0.06 + 0.013 * gauge)).toBeCloseTo(2 / 3, 1)
  })

  // National Design Specification, Table L3 (from memory): the design root is the larger series.
  test('the design root is larger than the traditional one', () => {
    for (const {rootIn, rootDesignIn} of screws)
      if (rootDesignIn !== undefined) expect(rootDesignIn).toBeGreaterThan(rootIn)
  })

  // A secondary table of pilots at 70 % and 90 % of the traditional root, to the nearest 1/64 in.
  test.each([
    [2, '1/32', '3/64'],
    [3, '3/64', '1/16'],
    [4, '3/64', '1/16'],
    [5, '1/16', '5/64'],
    [6, '1/16', '5/64'],
    [7, '5/64', '3/32'],
    [8, '5/64', '3/32'],
    [9, '5/64', '7/64'],
    [10, '3/32', '7/64'],
    [12, '7/64', '1/8'],
    [14, '7/64', '9/64'],
  ])('number %i takes %s in softwood and %s in hardwood', (gauge, soft, hard) => {
    const {pilotIn, rootIn} = row(gauge)
    expect(bareBit(bitOf('fraction', pilotIn.soft * 25.4)!)).toBe(`${soft} in`)
    expect(bareBit(bitOf('fraction', pilotIn.hard * 25.4)!)).toBe(`${hard} in`)
    // The printed bit is the nearest one or, in a near tie, its neighbour.
    expect(Math.abs(pilotIn.soft - 0.7 * rootIn)).toBeLessThan(0.0095)
    expect(Math.abs(pilotIn.hard - 0.9 * rootIn)).toBeLessThan(0.0095)
  })

  // The same table, shank holes.
  test('a shank hole takes the shank, but for number 10 and 5 as printed', () => {
    for (const {gauge, shankHoleIn} of screws) {
      const over = shankHoleIn - (0.06 + 0.013 * gauge)
      expect(over).toBeGreaterThanOrEqual(-0.0027)
      expect(over).toBeLessThan(0.013)
    }
  })
})

describe('drills', () => {
  // ANSI/ASME B94.11M, a full list seen in a secondary source: the ends of each series and the sizes that coincide.
  test('number sizes fall from 1 to 80, letters rise from A to Z', () => {
    expect(numberDrillsIn).toHaveLength(80)
    expect(Object.keys(letterDrillsIn)).toHaveLength(26)
    expect(numberDrillsIn.every((size, i) => i === 0 || size < numberDrillsIn[i - 1]!)).toBe(true)
    const letters = Object.values(letterDrillsIn)
    expect(letters.every((size, i) => i === 0 || size > letters[i - 1]!)).toBe(true)
    expect(numberDrillsIn[0]).toBeLessThan(letterDrillsIn.A!)
    expect([
      numberDrillsIn[0],
      numberDrillsIn[29],
      numberDrillsIn[33],
      numberDrillsIn[59],
      numberDrillsIn[79],
    ]).toEqual([0.228, 0.1285, 0.111, 0.04, 0.0135])
  })

  test('a size on the dot is found, and a tie has one answer', () => {
    expect(bareBit(bitOf('number', 0.111 * 25.4)!)).toBe('No. 34')
    expect(bareBit(bitOf('letter', 0.25 * 25.4)!)).toBe('E')
    expect(bareBit(bitOf('fraction', 0.25 * 25.4)!)).toBe('1/4 in')
    expect(bareBit(bitOf('fraction', 6.35 + 25.4 / 128)!)).toBe('1/4 in')
    expect(bareBit(bitOf('metric', 2.149)!)).toBe('2 mm')
    expect(bareBit(bitOf('metric', 3.505, 'up')!)).toBe('4 mm')
    expect(bareBit(bitOf('forstner', 1.375 * 25.4)!)).toBe('1 3/8 in')
    expect(bareBit(bitOf('metric forstner', 35)!)).toBe('35 mm')
    expect(bitOf('forstner', 100)).toBeUndefined()
  })

  // Another screw table gives its hardwood and softwood pilots as numbers beside fractions: 7/64 is No. 35, 5/64 No. 48.
  test.each([
    [0.9 * 0.094, 'No. 44', 0.0025],
    [7 / 64, 'No. 35', 0.001],
    [1 / 8, 'No. 31', 0.0051],
    [5 / 64, 'No. 48', 0.0026],
    [3 / 32, 'No. 43', 0.005],
  ])('%f in lies by %s', (size, name, within) => {
    const number = Number(name.slice(4))
    expect(Math.abs(numberDrillsIn[number - 1]! - size)).toBeLessThan(within)
  })

  // Common practice, no source.
  test('Forstner bits rise, in inches and in millimetres', () => {
    for (const sizes of [forstnerIn, forstnerMm])
      expect(sizes.every((size, i) => i === 0 || size > sizes[i - 1]!)).toBe(true)
  })
})
