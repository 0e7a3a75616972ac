import type {Context} from './context.ts'
import {Cutting, type Fill, type Packing, packingOf} from './cutting.ts'
import {fillWell} from './fills.ts'
import {OpenStrip} from './open-strip.ts'
import {spareWorth} from './prices.ts'
import {type Bin, type Job, lessLeft, type Prices, type Task} from './task.ts'

/**
 * Cut the widest and longest parts first, each into the bin where least is lost by the prices, with its strip filled
 * well; a filling that loses at most `tolerance` is taken at once, so that the longer parts go early.
 * Undefined as soon as more than may be left finds no room.
 */
export function quickCut(context: Context, job: Job, prices: Prices, tolerance: number): Packing | undefined {
  const {task} = context
  const cutting = new Cutting(task, job)
  const {counts, steps} = cutting
  for (let pivot = cutting.next(); pivot < counts.length; pivot = cutting.next(pivot)) {
    const best = bestFill(context, cutting, prices, {pivot, tolerance})
    if (best) {
      const {bin, fill} = best
      const times = fill.kinds.map((at, k) => Math.floor(counts[at]! / fill.copies[k]!))
      cutting.saw(bin, fill, Math.min(bin.count, ...times))
      continue
    }
    cutting.leaveOut(pivot)
    if (cutting.leftVolume > job.mayLeave) return undefined
  }
  return packingOf(task, job.counts, steps)
}

/** The bin that loses least when a strip as wide as the pivot is sawn off and filled well; none where it fits in none. */
function bestFill(
  {task, effort}: Context,
  {counts, bins}: Cutting,
  {worths, atWidth}: Prices,
  {pivot, tolerance}: {pivot: number; tolerance: number},
): {bin: Bin; fill: Fill} | undefined {
  const {width} = task.parts[pivot]!
  let best: {bin: Bin; fill: Fill} | undefined
  let least = Infinity
  for (const bin of bins) {
    // Where the effort ran out, the first that will do is taken.
    if (best && effort.over) break
    const {lane} = bin
    if (bin.count === 0 || bin.width < width || !task.lanes[lane]!.takes[pivot]) continue
    const base = atWidth(lane, bin.width) - atWidth(lane, bin.width - width)
    const strip = new OpenStrip(task, {lane, pivot}, counts, worths)
    const fill = fillWell(strip, base - tolerance, effort)
    const loss = base - fill.worth
    if (best && loss >= least) continue
    best = {bin, fill}
    least = loss
  }
  return best
}

/** How much of what is to spare, shared out over all strips, a filling may lose and still be taken at once. */
const shares = [0, 0.5, 1, 2, 4]

/** Cut quickly with several tolerances; the first cutting that leaves little enough, if there is one. */
export function packQuickly(
  context: Context,
  job: Job,
  prices: Prices = context.task.byArea,
): Packing | undefined {
  const {spare, held} = spareWorth(job, prices)
  if (spare < -1e-9 * held) return undefined
  for (const tolerance of tolerancesOf(context.task, job, prices)) {
    const cut = quickCut(context, job, prices, tolerance)
    if (cut) return cut
  }
  return undefined
}

/** Cut quickly with several tolerances; the cutting that leaves least. */
export function packMostQuickly(context: Context, job: Job): Packing {
  const {task} = context
  let best: Packing | undefined
  for (const tolerance of tolerancesOf(task, job, task.byArea)) {
    const mayLeave = best ? lessLeft(task, best.leftVolume) : Infinity
    if (mayLeave < 0) break
    best = quickCut(context, {...job, mayLeave}, task.byArea, tolerance) ?? best
  }
  return best!
}

/** What a filling may lose, by turns; nothing where nothing is to spare. */
function tolerancesOf({parts}: Task, job: Job, prices: Prices): readonly number[] {
  const {spare} = spareWorth({...job, mayLeave: 0}, prices)
  if (spare <= 0) return [0]
  const narrowest = parts[parts.length - 1]!.width
  let strips = 0
  for (const bin of job.bins) strips += bin.count * Math.max(1, Math.floor(bin.width / narrowest))
  return shares.map((share) => (spare * share) / strips)
}
