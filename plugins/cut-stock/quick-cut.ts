import type {Effort} from './effort.ts'
import {fillWell} from './fills.ts'
import {spareWorth} from './prices.ts'
import type {Step} from './search.ts'
import {restOf} from './search-state.ts'
import {type Bin, lessLeft, type Prices, type Task} from './task.ts'

interface QuickCut {
  steps: Step[]
  /** What found no room, by kind, and its volume. */
  left: Int32Array
  leftVolume: number
}

/**
 * Cut the widest and longest parts first, each into the bin where least is lost by the prices, with its strip filled
 * well; a filling that loses at most `tolerance` is taken at once, so that the longer parts go early.
 * Undefined as soon as more than `mayLeave` of volume finds no room.
 */
export function quickCut(
  task: Task,
  startCounts: ArrayLike<number>,
  startBins: readonly Bin[],
  {worths, atWidth}: Prices,
  tolerance: number,
  mayLeave: number,
  effort: Effort,
): QuickCut | undefined {
  const counts = Int32Array.from(startCounts)
  const bins = startBins.map((bin) => ({...bin}))
  const left = new Int32Array(counts.length)
  const steps: Step[] = []
  let leftVolume = 0
  for (let pivot = 0; pivot < counts.length; ) {
    if (counts[pivot] === 0) {
      pivot++
      continue
    }
    const part = task.parts[pivot]!
    let best: {bin: Bin; fill: ReturnType<typeof fillWell>; loss: number} | undefined
    for (const bin of bins) {
      const {length, takes} = task.lanes[bin.lane]!
      if (bin.count === 0 || bin.width < part.width || !takes[pivot] || length < part.length) continue
      const base = atWidth(bin.lane, bin.width) - atWidth(bin.lane, bin.width - part.width)
      const fill = fillWell(task, bin.lane, pivot, counts, worths, base - tolerance, effort)
      const loss = base - fill.worth
      if (!best || loss < best.loss) best = {bin, fill, loss}
    }
    if (!best) {
      left[pivot] = counts[pivot]!
      leftVolume += counts[pivot]! * part.volume
      if (leftVolume > mayLeave) return undefined
      counts[pivot] = 0
      continue
    }
    const {bin, fill} = best
    let times = bin.count
    fill.kinds.forEach((at, k) => {
      times = Math.min(times, Math.floor(counts[at]! / fill.copies[k]!))
    })
    restOf(bins, bin.lane, bin.width - part.width).count += times
    bin.count -= times
    fill.kinds.forEach((at, k) => {
      counts[at]! -= times * fill.copies[k]!
    })
    const step = {lane: bin.lane, from: bin.width, width: part.width, kinds: fill.kinds, copies: fill.copies}
    for (let time = 0; time < times; time++) steps.push(step)
  }
  return {steps, left, leftVolume}
}

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
