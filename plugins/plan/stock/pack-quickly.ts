import type {Effort} from './effort.ts'
import {spareWorth} from './prices.ts'
import {type QuickCut, quickCut} from './quick-cut.ts'
import type {Bin, Prices, Task} from './task.ts'

/** How much of what is to spare, shared out over all strips, a filling may lose and still be taken at once. */
const tolerances = [0, 0.5, 1, 2, 4]

/** Cut quickly with several tolerances; the first that leaves at most `mayLeave`, or the one that leaves least. */
export function packQuickly(
  task: Task,
  counts: ArrayLike<number>,
  bins: readonly Bin[],
  mayLeave: number,
  effort: Effort,
  prices: Prices = task.byArea,
): QuickCut {
  const narrowest = Math.min(...task.parts.map((part) => part.width))
  const strips = bins.reduce(
    (sum, bin) => sum + bin.count * Math.max(1, Math.floor(bin.width / narrowest)),
    0,
  )
  const share = Math.max(spareWorth(prices, counts, bins, 0).spare, 0) / Math.max(strips, 1)
  let best: QuickCut | undefined
  for (const tolerance of tolerances) {
    const next = quickCut(task, counts, bins, prices, share * tolerance, effort)
    if (!best || next.leftVolume < best.leftVolume) best = next
    if (best.leftVolume <= mayLeave) break
  }
  return best!
}
