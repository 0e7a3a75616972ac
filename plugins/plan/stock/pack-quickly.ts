import type {Effort} from './effort.ts'
import {lessLeft} from './less-left.ts'
import {spareWorth} from './prices.ts'
import {type QuickCut, quickCut} from './quick-cut.ts'
import type {Bin, Prices, Task} from './task.ts'

/** How much of what is to spare, shared out over all strips, a filling may lose and still be taken at once. */
const tolerances = [0, 0.5, 1, 2, 4]

/** Cut quickly with several tolerances; the first cutting that leaves at most `mayLeave`, if there is one. */
export function packQuickly(
  task: Task,
  counts: ArrayLike<number>,
  bins: readonly Bin[],
  mayLeave: number,
  effort: Effort,
  prices: Prices = task.byArea,
): QuickCut | undefined {
  const {spare, held} = spareWorth(prices, counts, bins, mayLeave)
  if (spare < -1e-9 * held) return undefined
  const share = sparePerStrip(task, counts, bins, prices)
  for (const tolerance of tolerances) {
    const cut = quickCut(task, counts, bins, prices, share * tolerance, mayLeave, effort)
    if (cut) return cut
  }
  return undefined
}

/** Cut quickly with several tolerances; the cutting that leaves least. */
export function packMostQuickly(
  task: Task,
  counts: ArrayLike<number>,
  bins: readonly Bin[],
  effort: Effort,
): QuickCut {
  const share = sparePerStrip(task, counts, bins, task.byArea)
  let best: QuickCut | undefined
  for (const tolerance of tolerances) {
    const mayLeave = best ? lessLeft(task, best.leftVolume) : Infinity
    if (mayLeave < 0) break
    best = quickCut(task, counts, bins, task.byArea, share * tolerance, mayLeave, effort) ?? best
  }
  return best!
}

function sparePerStrip(
  {parts}: Task,
  counts: ArrayLike<number>,
  bins: readonly Bin[],
  prices: Prices,
): number {
  const narrowest = parts[parts.length - 1]!.width
  let strips = 0
  for (const bin of bins) strips += bin.count * Math.max(1, Math.floor(bin.width / narrowest))
  return Math.max(spareWorth(prices, counts, bins, 0).spare, 0) / Math.max(strips, 1)
}
