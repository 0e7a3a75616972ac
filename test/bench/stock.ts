import highsModule from 'highs'
import {cutStock, type StockPart, type StockPiece} from '../../plugins/cut-stock/cut-stock.ts'
import type {Measure} from '../bench.ts'
import {type Cutting, numbers, randomCutting} from '../cut-stock/random-cutting.ts'
import {rods} from '../cut-stock/rods.ts'
import {twoStageOracle} from '../cut-stock/two-stage-oracle.ts'

const volume = (it: StockPart | StockPiece) => (it.lengthMm * it.widthMm * it.thicknessMm) / 1000

/** Rods of three lengths for so many parts of 80 to 899 mm, and enough pieces of each. */
function threeLengths(seed: number, count: number, each: number): Cutting {
  const random = numbers(seed)
  const stock = [2400, 1800, 1200].map((lengthMm) => [lengthMm, each] as const)
  const demand = Array.from({length: count}, () => [80 + Math.floor(random() * 820), 1] as const)
  return {...rods(stock, demand), saw: {kerfMm: 3, trimMm: 0}}
}

const numbered = (count: number, cuttingOf: (seed: number) => Cutting): Cutting[] =>
  Array.from({length: count}, (_, seed) => cuttingOf(seed))

/** How many times faster than a general integer program, at the same optimum, instance by instance, both warm. */
export async function bench(): Promise<Measure[]> {
  const highs = await (highsModule as unknown as typeof highsModule.default)()
  const compare = ({parts, pieces, saw}: Cutting) => {
    const start = performance.now()
    const plan = cutStock(parts, pieces, saw)
    const ours = performance.now() - start
    const again = performance.now()
    const best = twoStageOracle(highs, parts, pieces, saw, {time_limit: 60})
    const theirs = performance.now() - again
    const cut = plan.pieces.reduce((sum, {piece}) => sum + volume(piece), 0)
    return {ratio: theirs / ours, isSame: plan.proven && Math.abs(cut - best.cut) < 1e-3}
  }
  for (const {parts, pieces, saw} of numbered(500, (seed) => randomCutting(7000 + seed)))
    cutStock(parts, pieces, saw)
  for (const cutting of numbered(60, (seed) => randomCutting(8000 + seed))) compare(cutting)
  const sets: [name: string, cuttings: Cutting[]][] = [
    ['two-stage, 4 to 11 parts', numbered(40, randomCutting)],
    ['two-stage, 12 to 30 parts', numbered(16, (seed) => randomCutting(3000 + seed, [12, 30]))],
    ['three lengths, 12 parts', numbered(6, (seed) => threeLengths(seed, 12, 3))],
  ]
  const compared = sets.map(([name, cuttings]) => ({name, all: cuttings.map(compare)}))
  compared.push({name: 'all of these, up to 30 parts', all: compared.flatMap(({all}) => all)})
  return compared.map(({name, all}) => {
    const ratios = all.map(({ratio}) => ratio).sort((a, b) => a - b)
    const same = all.filter(({isSame}) => isSame).length
    return {
      name: `cut list against a general integer program, ${name}`,
      ratio: ratios[ratios.length >> 1]!,
      detail: `median of ${all.length}, ${same} at the same optimum; from ${ratios[0]!.toPrecision(2)} to ${ratios.at(-1)!.toPrecision(2)} times`,
    }
  })
}
