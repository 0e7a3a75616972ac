import {describe, expect, test} from 'vitest'
import {cutStock, type StockPart, type StockPiece} from '../../plugins/cut-stock/cut-stock.ts'
import fc from '../support/properties.ts'
import {randomCutting} from './random-cutting.ts'

const saw = {kerfMm: 3, trimMm: 0}
const part = (id: string, lengthMm: number, widthMm = 20): StockPart => ({
  id,
  wood: 'beech',
  lengthMm,
  widthMm,
  thicknessMm: 10,
})
const piece = (id: string, lengthMm: number, widthMm = 20): StockPiece => ({
  id,
  wood: 'beech',
  lengthMm,
  widthMm,
  thicknessMm: 10,
})

// Answers worked out by hand.
describe('aims, in their order', () => {
  test('the greatest volume is placed, even by fewer parts', () => {
    const plan = cutStock([part('a', 350), part('b', 350), part('c', 900)], [piece('A1', 1000)], saw)
    expect(plan).toMatchObject({unplaced: ['a', 'b'], proven: true})
  })

  test('one large piece loses against two small ones of less volume', () => {
    const plan = cutStock(
      [part('a', 500), part('b', 500)],
      [piece('A1', 1200), piece('A2', 510), piece('A3', 510)],
      saw,
    )
    expect(plan.pieces.map(({piece: {id}}) => id)).toEqual(['A2', 'A3'])
  })

  test('among equal pieces the earlier one is cut, and of equal volumes the fewer', () => {
    const alike = [piece('A1', 500), piece('A2', 500), piece('A3', 1000)]
    expect(cutStock([part('a', 400)], alike, saw).pieces.map(({piece: {id}}) => id)).toEqual(['A1'])
    expect(cutStock([part('a', 400), part('b', 400)], alike, saw).used).toBe(1)
  })

  test('ends too short to keep are brought together into one that goes back', () => {
    // 300 + 300 and 250 + 250 leave two ends of 94 and 194 mm; so do 300 + 250 twice, of which neither could be better.
    const plan = cutStock(
      [part('a', 300), part('b', 300), part('c', 250), part('d', 250)],
      [piece('A1', 700), piece('A2', 700)],
      saw,
    )
    expect(plan.pieces.flatMap(({offcuts}) => offcuts.map(({lengthMm}) => Math.round(lengthMm)))).toEqual([
      144, 144,
    ])
  })

  test('two narrow parts share a strip and leave the board wide', () => {
    const plan = cutStock([part('a', 400), part('b', 400)], [piece('A1', 1000, 100)], saw)
    expect(plan.fenceSettings).toBe(1)
    expect(plan.pieces[0]!.offcuts.map(({lengthMm, widthMm}) => [lengthMm, widthMm])).toEqual([
      [1000, 77],
      [194, 20],
    ])
  })

  test('parts of one width are ripped together rather than a narrow one off a wide strip', () => {
    const parts = [part('a', 400, 40), part('b', 400, 40), part('c', 400, 20)]
    const plan = cutStock(parts, [piece('A1', 900, 63)], saw)
    expect(plan).toMatchObject({used: 1, fenceSettings: 2})
    expect(plan.pieces[0]!.strips.map(({widthMm}) => widthMm)).toEqual([40, 20])
  })

  test('waste counts kerfs, squared ends and what is ripped off, not offcuts that go back', () => {
    const plan = cutStock([part('a', 480)], [piece('A1', 1000)], {kerfMm: 4, trimMm: 10})
    // 1000 − 20 squared − 480 − 4: an offcut of 496 goes back; 24 of 1000 are lost.
    expect(plan.wasteFraction).toBeCloseTo(0.024, 12)
  })
})

describe('laws', () => {
  const seeds = fc.integer({min: 1, max: 100_000})

  test('the same cutting gives the same plan', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const {parts, pieces, saw: own} = randomCutting(seed)
        expect(cutStock(parts, pieces, own)).toEqual(cutStock(parts, pieces, own))
      }),
      {numRuns: 30},
    )
  })

  test('neither the order of the parts nor the unit changes what is placed and cut', () => {
    const measure = (plan: ReturnType<typeof cutStock>, parts: readonly StockPart[]) => {
      const volume = (it: StockPart | StockPiece) => it.lengthMm * it.widthMm * it.thicknessMm
      const placed = parts
        .filter(({id}) => !plan.unplaced.includes(id))
        .reduce((sum, one) => sum + volume(one), 0)
      return [placed, plan.pieces.reduce((sum, one) => sum + volume(one.piece), 0)] as const
    }
    fc.assert(
      fc.property(seeds, (seed) => {
        const {parts, pieces, saw: own} = randomCutting(seed)
        const scaled = <T extends StockPart | StockPiece>(it: T): T => ({
          ...it,
          lengthMm: it.lengthMm * 2.54,
          widthMm: it.widthMm * 2.54,
          thicknessMm: it.thicknessMm * 2.54,
        })
        const [placed, cut] = measure(cutStock(parts, pieces, own), parts)
        const turned = [...parts].reverse()
        expect(measure(cutStock(turned, pieces, own), parts)).toEqual([
          expect.closeTo(placed, 3),
          expect.closeTo(cut, 3),
        ])
        const larger = parts.map(scaled)
        const [p, c] = measure(
          cutStock(larger, pieces.map(scaled), {kerfMm: own.kerfMm * 2.54, trimMm: own.trimMm * 2.54}),
          larger,
        )
        expect(p / 2.54 ** 3).toBeCloseTo(placed, 3)
        expect(c / 2.54 ** 3).toBeCloseTo(cut, 3)
      }),
      {numRuns: 40},
    )
  })

  test('a wider kerf never places more', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const {parts, pieces, saw: own} = randomCutting(seed)
        const more = cutStock(parts, pieces, {...own, kerfMm: own.kerfMm + 1.5})
        const volume = (ids: readonly string[]) =>
          parts.reduce(
            (sum, {id, lengthMm, widthMm, thicknessMm}) =>
              sum + (ids.includes(id) ? lengthMm * widthMm * thicknessMm : 0),
            0,
          )
        expect(volume(more.unplaced)).toBeGreaterThanOrEqual(
          volume(cutStock(parts, pieces, own).unplaced) * (1 - 1e-9),
        )
      }),
      {numRuns: 30},
    )
  })
})
