import highsModule from 'highs'
import {cutStock} from '../../plugins/plan/stock/cut-stock.ts'
import type {StockPart, StockPiece} from '../../plugins/plan/stock/task.ts'
import type {Measure} from '../bench.ts'
import {type Cutting, numbers, randomCutting} from '../plan/stock/random-cutting.ts'
import {rods} from '../plan/stock/rods.ts'
import {twoStageOracle} from '../plan/stock/two-stage-oracle.ts'

const volume = (it: StockPart | StockPiece) => (it.lengthMm * it.widthMm * it.thicknessMm) / 1000

/** Rods of three lengths for so many parts of 80 to 899 mm, and enough pieces of each. */
function threeLengths(seed: number, count: number, each: number): Cutting {
  const random = numbers(seed)
  const stock = [2400, 1800, 1200].map((lengthMm) => [lengthMm, each] as const)
  const demand = Array.from({length: count}, () => [80 + Math.floor(random() * 820), 1] as const)
  return {...rods(stock, demand), saw: {kerfMm: 3, trimMm: 0}}
}

/** How many times faster than a general integer program, at the same optimum, instance by instance. */
export async function bench(): Promise<Measure[]> {
  const highs = await (highsModule as unknown as typeof highsModule.default)()
  const sets: [name: string, cuttings: Cutting[]][] = [
    ['two-stage, 4 to 11 parts', Array.from({length: 40}, (_, seed) => randomCutting(seed))],
    [
      'two-stage, 12 to 30 parts',
      Array.from({length: 16}, (_, seed) => randomCutting(3000 + seed, [12, 30])),
    ],
    ['three lengths, 12 parts', Array.from({length: 6}, (_, seed) => threeLengths(seed, 12, 3))],
  ]
  return sets.map(([name, cuttings]) => {
    let same = 0
    const ratios = cuttings.map(({parts, pieces, saw}) => {
      const start = performance.now()
      const plan = cutStock(parts, pieces, saw)
      const ours = performance.now() - start
      const again = performance.now()
      const best = twoStageOracle(highs, parts, pieces, saw, {time_limit: 60})
      const theirs = performance.now() - again
      const cut = plan.pieces.reduce((sum, {piece}) => sum + volume(piece), 0)
      if (plan.proven && Math.abs(cut - best.cut) < 1e-3) same++
      return theirs / ours
    })
    ratios.sort((a, b) => a - b)
    return {
      name: `cut list against a general integer program, ${name}`,
      ratio: ratios[ratios.length >> 1]!,
      detail: `median of ${cuttings.length}, ${same} at the same optimum; from ${ratios[0]!.toPrecision(2)} to ${ratios.at(-1)!.toPrecision(2)} times`,
    }
  })
}
