import highsModule from 'highs'
import {expect, test} from 'vitest'
import {cutStock, type StockPart, type StockPiece} from '../../plugins/cut-stock/cut-stock.ts'
import {cutPlanFaults} from './cut-plan-faults.ts'
import {randomCutting} from './random-cutting.ts'
import {twoStageOracle} from './two-stage-oracle.ts'
import '../support/slow.ts'

const volume = (it: StockPart | StockPiece) => (it.lengthMm * it.widthMm * it.thicknessMm) / 1000
const total = (all: readonly (StockPart | StockPiece)[]) => all.reduce((sum, one) => sum + volume(one), 0)

test('320 random cuttings are as good as a general integer program makes them, and proven', async () => {
  const highs = await (highsModule as unknown as typeof highsModule.default)()
  const differ: string[] = []
  let scarce = 0
  for (let seed = 0; seed < 320; seed++) {
    const {parts, pieces, saw} = randomCutting(seed)
    const plan = cutStock(parts, pieces, saw)
    const best = twoStageOracle(highs, parts, pieces, saw)
    const placed = total(parts.filter(({id}) => !plan.unplaced.includes(id)))
    const cut = total(plan.pieces.map(({piece}) => piece))
    const isSame = Math.abs(placed - best.placed) < 1e-3 && Math.abs(cut - best.cut) < 1e-3
    if (!isSame || !plan.proven || !best.isOptimal)
      differ.push(`${seed}: ${placed} ${cut}, ${best.placed} ${best.cut}`)
    for (const fault of cutPlanFaults(plan, parts, pieces, saw)) differ.push(`${seed}: ${fault}`)
    if (plan.unplaced.length > 0) scarce++
    // However early a search is stopped, it never says that it has proven what is not so.
    for (const effort of [1, 300, 3000, 30_000]) {
      const early = cutStock(parts, pieces, saw, effort)
      const earlyPlaced = total(parts.filter(({id}) => !early.unplaced.includes(id)))
      const earlyCut = total(early.pieces.map(({piece}) => piece))
      const isBest = Math.abs(earlyPlaced - best.placed) < 1e-3 && Math.abs(earlyCut - best.cut) < 1e-3
      if (early.proven && !isBest) differ.push(`${seed}: proves ${earlyPlaced} ${earlyCut} with ${effort}`)
      for (const fault of cutPlanFaults(early, parts, pieces, saw))
        differ.push(`${seed}, ${effort}: ${fault}`)
      const isSamePlaced = Math.abs(earlyPlaced - best.placed) < 1e-3
      if (isSamePlaced && earlyCut / (1 + early.gapFraction) > best.cut + 1e-3)
        differ.push(`${seed}: a gap too small`)
    }
  }
  expect(differ).toEqual([])
  expect(scarce).toBeGreaterThan(50)
})
