import type {Cover} from './choose-pieces.ts'
import {coverOf} from './cover-of.ts'
import type {Effort} from './effort.ts'
import {areaFronts, quickCut} from './quick-cut.ts'
import {type Pattern, type Relaxed, relax} from './relax.ts'
import {type Prices, type Reprice, type Step, search, type Verdict} from './search.ts'
import type {Bin, Task} from './task.ts'
import {tightSearch} from './tight-search.ts'

export interface Packing {
  verdict: 'found' | 'none' | 'unknown'
  steps: Step[]
  left: Int32Array
  leftVolume: number
  /** Why there is none, as a condition on any choice of pieces. */
  cover?: Cover
}

/** Cut quickly with several tolerances; the first that leaves at most `mayLeave`, or the one that leaves least. */
export function packQuickly(
  task: Task,
  counts: ArrayLike<number>,
  bins: readonly Bin[],
  mayLeave: number,
  effort: Effort,
) {
  let area = 0
  task.parts.forEach((part, at) => {
    area += counts[at]! * part.length * part.width
  })
  let room = 0
  let strips = 0
  const narrowest = Math.min(...task.parts.map((part) => part.width))
  for (const bin of bins) {
    room += bin.count * bin.width * task.lanes[bin.lane]!.length
    strips += bin.count * Math.max(1, Math.floor(bin.width / narrowest))
  }
  const spare = Math.max(room - area, 0) / Math.max(strips, 1)
  let best = quickCut(task, counts, bins, 0, effort)
  for (const factor of [0.5, 1, 2, 4]) {
    if (best.leftVolume <= mayLeave) break
    const next = quickCut(task, counts, bins, spare * factor, effort)
    if (next.leftVolume < best.leftVolume) best = next
  }
  return best
}

/** Settle whether all parts but `mayLeave` of volume can be cut out of the bins. */
export function packInto(
  task: Task,
  counts: ArrayLike<number>,
  bins: readonly Bin[],
  mayLeave: number,
  pool: Pattern[],
  effort: Effort,
): Packing {
  const quick = packQuickly(task, counts, bins, mayLeave, effort)
  if (quick.leftVolume <= mayLeave) return {verdict: 'found', ...quick}
  const nothing = {steps: [], left: new Int32Array(counts.length), leftVolume: Infinity}
  const misfit = withoutRoom(task, counts, bins)
  if (misfit.volume > mayLeave * (1 + 1e-12)) return {verdict: 'none', ...nothing}
  const fitting = Int32Array.from(counts, (count, at) => (misfit.kinds.has(at) ? 0 : count))
  const leave = Math.max(mayLeave - misfit.volume, 0)
  const early = searchByArea(task, fitting, bins, leave, effort)
  if (typeof early === 'object') return found(task, counts, early.found)
  const relaxed = relax(task, fitting, bins, leave, pool, effort)
  if (relaxed.bound > 1 + 1e-7)
    return {verdict: 'none', ...nothing, cover: coverOf(task, counts, relaxed, mayLeave, effort)}
  if (early === 'none') return {verdict: 'none', ...nothing}
  const whole = wholePatterns(fitting, bins, relaxed)
  const rest = whole.steps.length > 0 ? relax(task, whole.counts, whole.bins, leave, pool, effort) : relaxed
  const reprice: Reprice = (now, left, may) => {
    const parts = now.reduce((sum, n) => sum + n, 0)
    if (parts < 8) return undefined
    const narrow = withoutRoom(task, now, left)
    if (narrow.volume > may * (1 + 1e-12)) return 'none'
    if (narrow.kinds.size > 0) return undefined
    const open = left.filter((bin) => bin.count > 0)
    const again = relax(task, now, open, may, pool, effort)
    return again.bound > 1 + 1e-7 ? 'none' : pricesOf(again)
  }
  const listed = tightSearch(
    task,
    whole.counts,
    whole.bins,
    pricesOf(rest),
    leave,
    effort.part((effort.limit - effort.spent) * 0.4),
  )
  if (typeof listed === 'object') return found(task, counts, [...whole.steps, ...listed.found])
  if (listed === 'none' && whole.steps.length === 0) return {verdict: 'none', ...nothing}
  const dive = effort.part((effort.limit - effort.spent) * 0.6)
  let verdict = search(task, whole.counts, whole.bins, pricesOf(rest), leave, dive, {share: 0.4, reprice})
  if (verdict === 'unknown') verdict = search(task, whole.counts, whole.bins, pricesOf(rest), leave, effort)
  if (typeof verdict === 'object') return found(task, counts, [...whole.steps, ...verdict.found])
  return {verdict: verdict === 'none' && whole.steps.length === 0 ? 'none' : 'unknown', ...nothing}
}

function found(task: Task, counts: ArrayLike<number>, steps: Step[]): Packing {
  const left = Int32Array.from(counts)
  for (const step of steps)
    step.kinds.forEach((at, k) => {
      left[at]! -= step.copies[k]!
    })
  return {
    verdict: 'found',
    steps,
    left,
    leftVolume: left.reduce((sum, n, at) => sum + n * task.parts[at]!.volume, 0),
  }
}

const pricesOf = ({worths, lanes, leftWorth}: Relaxed): Prices => ({
  worths,
  leftWorth,
  atWidth: (lane, width) => lanes[lane]?.atWidth(width) ?? 0,
})

/** Price parts by their area, kerfs counted in: the plainest bound, and sharp where pieces are to be filled. */
function areaPrices(task: Task, counts: ArrayLike<number>, bins: readonly Bin[], effort: Effort): Prices {
  const fronts = areaFronts(task, counts, bins, effort)
  const worths = task.parts.map((part) => part.length * part.width)
  return {
    worths,
    leftWorth: Math.max(...task.parts.map((part, at) => worths[at]! / part.volume)),
    atWidth: (lane, width) => fronts[lane]!(width),
  }
}

/** With more parts than this, what the relaxed cutting says comes first. */
const mostEarly = 130

/** Before the relaxed cutting is solved, look with plain area alone: long enough where pieces are to be filled up. */
function searchByArea(
  task: Task,
  counts: Int32Array,
  bins: readonly Bin[],
  leave: number,
  effort: Effort,
): Verdict {
  if (counts.reduce((sum, n) => sum + n, 0) > mostEarly) return 'unknown'
  const prices = areaPrices(task, counts, bins, effort)
  let held = 0
  let needed = -prices.leftWorth * leave
  for (const bin of bins) held += bin.count * prices.atWidth(bin.lane, bin.width)
  counts.forEach((n, at) => {
    needed += n * prices.worths[at]!
  })
  const isTight = held - needed < 0.005 * held
  return isTight
    ? tightSearch(task, counts, bins, prices, leave, effort.part(effort.limit * 0.7))
    : search(task, counts, bins, prices, leave, effort.part(Math.min(effort.limit / 10, 30_000)))
}

function withoutRoom(task: Task, counts: ArrayLike<number>, bins: readonly Bin[]) {
  const kinds = new Set<number>()
  let volume = 0
  task.parts.forEach((part, at) => {
    if (counts[at]! === 0) return
    const fits = bins.some(
      (bin) =>
        bin.count > 0 &&
        bin.width >= part.width &&
        task.lanes[bin.lane]!.takes[at] &&
        task.lanes[bin.lane]!.length >= part.length,
    )
    if (fits) return
    kinds.add(at)
    volume += counts[at]! * part.volume
  })
  return {kinds, volume}
}

/** Cut the whole part of each pattern's share first, where there are many parts; the rest is small. */
function wholePatterns(counts: Int32Array, bins: readonly Bin[], relaxed: Relaxed) {
  const rest = Int32Array.from(counts)
  const restBins = bins.map((bin) => ({...bin}))
  const steps: Step[] = []
  const total = counts.reduce((sum, n) => sum + n, 0)
  if (total < 80) return {steps, counts: rest, bins: restBins}
  for (const {bin, pattern, amount} of [...relaxed.taken].sort((a, b) => b.amount - a.amount)) {
    for (let time = 0; time < Math.floor(amount + 1e-6); time++) {
      const over = [...pattern.uses].some(([at, copies]) => rest[at]! < copies)
      if (over || restBins[bin]!.count === 0) break
      restBins[bin]!.count--
      let width = restBins[bin]!.width
      for (const strip of pattern.strips) {
        steps.push({
          lane: pattern.lane,
          from: width,
          width: strip.width,
          kinds: [...strip.holds.keys()],
          copies: [...strip.holds.values()],
        })
        width -= strip.width
      }
      const known = restBins.find((other) => other.lane === pattern.lane && other.width === width)
      if (known) known.count++
      else restBins.push({lane: pattern.lane, width, count: 1})
      for (const [at, copies] of pattern.uses) rest[at]! -= copies
    }
  }
  return {steps, counts: rest, bins: restBins.filter((bin) => bin.count > 0)}
}
