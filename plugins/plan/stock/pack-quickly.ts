import type {Effort} from './effort.ts'
import {lessLeft} from './less-left.ts'
import {spareWorth} from './prices.ts'
import {type QuickCut, quickCut} from './quick-cut.ts'
import type {Bin, Prices, Task} from './task.ts'

/** How much of what is to spare, shared out over all strips, a filling may lose and still be taken at once. */
const shares = [0, 0.5, 1, 2, 4]

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
  for (const tolerance of tolerancesOf(task, counts, bins, prices)) {
    const cut = quickCut(task, counts, bins, prices, tolerance, mayLeave, effort)
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
  let best: QuickCut | undefined
  for (const tolerance of tolerancesOf(task, counts, bins, task.byArea)) {
    const mayLeave = best ? lessLeft(task, best.leftVolume) : Infinity
    if (mayLeave < 0) break
    best = quickCut(task, counts, bins, task.byArea, tolerance, mayLeave, effort) ?? best
  }
  return best!
}

/** What a filling may lose, by turns; nothing where nothing is to spare. */
function tolerancesOf(
  {parts}: Task,
  counts: ArrayLike<number>,
  bins: readonly Bin[],
  prices: Prices,
): readonly number[] {
  const {spare} = spareWorth(prices, counts, bins, 0)
  if (spare <= 0) return [0]
  const narrowest = parts[parts.length - 1]!.width
  let strips = 0
  for (const bin of bins) strips += bin.count * Math.max(1, Math.floor(bin.width / narrowest))
  return shares.map((share) => (spare * share) / strips)
}
