import {type Cover, coverOf} from './choose-pieces.ts'
import type {Effort} from './effort.ts'
import type {Pattern} from './patterns.ts'
import {mixedPrices, relaxedPrices, spareWorth} from './prices.ts'
import {packQuickly} from './quick-cut.ts'
import {type Relaxed, relax} from './relax.ts'
import {type Outcome, type Reprice, type Step, search} from './search.ts'
import {restOf} from './search-state.ts'
import {tightSearch} from './table-search.ts'
import {type Bin, lessLeft, type Task, withoutRoom} from './task.ts'

/** With fewer parts than this every one is placed by search. */
const mostSearched = 80

/**
 * Cut the whole part of each pattern's share first, where there are many parts: what is left is small, and a cutting
 * of it completes them. (Rounding down after Gilmore & Gomory 1961.)
 */
function wholePatterns(
  counts: Int32Array,
  bins: readonly Bin[],
  {taken}: Pick<Relaxed, 'taken'>,
): {steps: Step[]; counts: Int32Array; bins: Bin[]} {
  const rest = Int32Array.from(counts)
  const left = bins.map((bin) => ({...bin}))
  const steps: Step[] = []
  const total = counts.reduce((sum, n) => sum + n, 0)
  const shares = total < mostSearched ? [] : [...taken].sort((a, b) => b.amount - a.amount)
  for (const {bin, pattern, amount} of shares)
    for (let time = 0; time < Math.floor(amount + 1e-6); time++) {
      const from = left[bin]!
      if (from.count === 0 || [...pattern.uses].some(([at, copies]) => rest[at]! < copies)) break
      from.count--
      let {width} = from
      for (const strip of pattern.strips) {
        const [kinds, copies] = [[...strip.holds.keys()], [...strip.holds.values()]]
        steps.push({lane: pattern.lane, from: width, width: strip.width, kinds, copies})
        width -= strip.width
      }
      restOf(left, pattern.lane, width).count++
      for (const [at, copies] of pattern.uses) rest[at]! -= copies
    }
  return {steps, counts: rest, bins: left.filter(({count}) => count > 0)}
}

export interface Packing {
  steps: Step[]
  left: Int32Array
  leftVolume: number
}

export interface Packed {
  packing?: Packing
  /** It is settled: there is none, or none better. */
  ended: boolean
  /** Why there is none, as a condition on any choice of pieces. */
  cover?: Cover
  /** What share of the bins the relaxed cutting takes: the less, the sooner something is found. */
  share?: number
}

interface PackOptions {
  /** Look for the cutting that leaves least, not only for one that leaves at most so much. */
  isForBest?: boolean
}

/** With more parts than this, what the relaxed cutting says comes first. */
const mostEarly = 130

/** A search for what to fill up is worth its while where no more than this is to spare. */
const tight = 0.005
const rather = 0.03

/** Settle whether all parts but `mayLeave` of volume can be cut out of the bins, where a quick cut did not do it. */
export function packInto(
  task: Task,
  counts: ArrayLike<number>,
  bins: readonly Bin[],
  mayLeave: number,
  pool: Pattern[],
  effort: Effort,
  {isForBest = false}: PackOptions = {},
): Packed {
  const misfit = withoutRoom(task, counts, bins)
  if (misfit.volume > mayLeave * (1 + 1e-12)) return {ended: true}
  const fitting = Int32Array.from(counts, (count, at) => (misfit.kinds.has(at) ? 0 : count))
  const leave = Math.max(mayLeave - misfit.volume, 0)
  const packed = ({found, ended}: Outcome, before: readonly Step[] = []): Packed =>
    found ? {packing: packingOf(task, counts, [...before, ...found]), ended} : {ended}

  const {byArea} = task
  let isFull = false
  if (fitting.reduce((sum, n) => sum + n, 0) <= mostEarly) {
    const {spare, held} = spareWorth(byArea, fitting, bins, leave)
    isFull = leave === 0 && spare < tight * held
    const brief = effort.part(isFull ? effort.limit * 0.2 : Math.min(effort.limit / 10, 30_000))
    const early = isFull
      ? tightSearch(task, fitting, bins, byArea, brief)
      : search(task, fitting, bins, byArea, leave, brief, {isForBest})
    if (early.ended || (early.found && !isForBest)) return packed(early)
  }
  const relaxed = relax(task, fitting, bins, leave, pool, effort)
  if (relaxed.bound > 1 + 1e-9) return {ended: true, cover: coverOf(task, counts, relaxed, mayLeave, effort)}
  if (!isForBest) {
    const mixed = mixedPrices(relaxedPrices(relaxed), byArea, 0.2, bins)
    const quick = packQuickly(task, counts, bins, mayLeave, effort, mixed)
    if (quick) return {packing: quick, ended: true}
  }
  const whole = wholePatterns(fitting, bins, relaxed)
  const isWhole = whole.steps.length === 0
  const prices = relaxedPrices(isWhole ? relaxed : relax(task, whole.counts, whole.bins, leave, pool, effort))
  const part = (share: number) => effort.part((effort.limit - effort.spent) * share)
  const look = (own: Effort, more: {share?: number; reprice?: Reprice} = {}) =>
    search(task, whole.counts, whole.bins, prices, may, own, {...more, isForBest})
  const {spare, held} = spareWorth(prices, whole.counts, whole.bins, leave)
  const isTight = leave === 0 && spare < rather * held
  const ways = [
    ...(isTight ? [() => tightSearch(task, whole.counts, whole.bins, prices, part(0.5))] : []),
    () => look(part(isForBest ? 0.7 : 0.3)),
    () => look(part(0.6), {share: 0.4, reprice: repriced(task, pool, effort)}),
    () => (isFull && isWhole ? tightSearch(task, fitting, bins, byArea, effort) : look(effort)),
  ]
  let may = leave
  let best: Outcome = {ended: false}
  for (const way of ways) {
    const outcome = way()
    best = {...best, ...outcome}
    if (outcome.found) may = lessLeft(task, packingOf(task, whole.counts, outcome.found).leftVolume)
    if (outcome.ended || (outcome.found && !isForBest)) break
  }
  const isSettled = best.ended && (isWhole || best.found !== undefined)
  const outcome = {...best, ended: isSettled && (isWhole || !isForBest)}
  return {...packed(outcome, whole.steps), share: relaxed.bound}
}

/** Solve the relaxed cutting again where a search stands; not for the last few parts. */
const repriced =
  (task: Task, pool: Pattern[], effort: Effort): Reprice =>
  (counts, bins, leave) => {
    if (counts.reduce((sum, n) => sum + n, 0) < 8) return undefined
    const misfit = withoutRoom(task, counts, bins)
    if (misfit.volume > leave * (1 + 1e-12)) return 'none'
    if (misfit.kinds.size > 0) return undefined
    const open = bins.filter((bin) => bin.count > 0)
    const again = relax(task, counts, open, leave, pool, effort)
    return again.bound > 1 + 1e-9 ? 'none' : relaxedPrices(again)
  }

function packingOf(task: Task, counts: ArrayLike<number>, steps: Step[]): Packing {
  const left = Int32Array.from(counts)
  for (const step of steps)
    step.kinds.forEach((at, k) => {
      left[at]! -= step.copies[k]!
    })
  const leftVolume = left.reduce((sum, n, at) => sum + n * task.parts[at]!.volume, 0)
  return {steps, left, leftVolume}
}
