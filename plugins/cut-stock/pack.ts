import {type Cover, coverOf} from './choose-pieces.ts'
import {allowed, type Context} from './context.ts'
import {fitting, type Packing, packingOf, type Step} from './cutting.ts'
import {wholePatterns} from './patterns.ts'
import {mixedPrices, spareWorth} from './prices.ts'
import {packQuickly} from './quick-cut.ts'
import {type Relaxed, relax} from './relax.ts'
import {type Outcome, type Reprice, type SearchOptions, search} from './search.ts'
import {tightSearch} from './table-search.ts'
import {type Job, lessLeft, total} from './task.ts'

export interface Packed {
  packing?: Packing | undefined
  /** It is settled: there is none, or none better. */
  ended: boolean
  /** Why there is none, as a condition on any choice of pieces. */
  cover?: Cover
  /** What share of the bins the relaxed cutting takes: the less, the sooner something is found. */
  share?: number
}

/** With more parts than this, what the relaxed cutting says comes first. */
const mostEarly = 130

/** A search for what to fill up is worth its while where no more than this is to spare. */
const tight = 0.005
const rather = 0.03

/**
 * Settle whether a job can be done, where a quick cut did not do it. `isForBest`: look for the cutting that leaves
 * least, not only for one that leaves at most so much.
 */
export function packInto(context: Context, job: Job, isForBest = false): Packed {
  const {task, effort} = context
  const {byArea} = task
  const {counts, misfitVolume} = fitting(task, job)
  if (misfitVolume > job.mayLeave * (1 + 1e-12)) return {ended: true}
  const fits: Job = {...job, counts, mayLeave: Math.max(job.mayLeave - misfitVolume, 0)}
  const packed = ({found, ended}: Outcome): Packed => ({
    packing: found && packingOf(task, job.counts, found),
    ended,
  })
  const isEarly = total(counts) <= mostEarly
  const isFull = isEarly && isTight(fits, byArea, tight)
  if (isEarly) {
    const early = isFull
      ? tightSearch(allowed(context, effort.limit * 0.2), fits, byArea)
      : search(allowed(context, Math.min(effort.limit / 10, 30_000)), fits, byArea, {isForBest})
    if (early.ended || (early.found && !isForBest)) return packed(early)
  }
  const relaxed = relax(context, fits)
  if (relaxed.bound > 1 + 1e-9) return {ended: true, cover: coverOf(context, job, relaxed.prices)}
  if (!isForBest) {
    const quick = packQuickly(context, job, mixedPrices(relaxed.prices, byArea, 0.2, job.bins))
    if (quick) return {packing: quick, ended: true}
  }
  return {...packed(searchRelaxed(context, fits, relaxed, {isForBest, isFull})), share: relaxed.bound}
}

/** Tell whether no more than a share of the bins is to spare, and nothing may be left. */
function isTight(job: Job, prices: Relaxed['prices'], share: number): boolean {
  const {spare, held} = spareWorth(job, prices)
  return job.mayLeave === 0 && spare < share * held
}

/** Search by the prices of a relaxed cutting, in one way after the other, once the whole part of it is cut. */
function searchRelaxed(
  context: Context,
  job: Job,
  relaxed: Relaxed,
  {isForBest, isFull}: {isForBest: boolean; isFull: boolean},
): Outcome {
  const {task, effort} = context
  const {steps, rest} = wholePatterns(job, relaxed.taken)
  const isAll = steps.length === 0
  const {prices} = isAll ? relaxed : relax(context, rest)
  let {mayLeave} = rest
  const part = (share: number) => allowed(context, (effort.limit - effort.spent) * share)
  const look = (own: Context, options: SearchOptions = {}) =>
    search(own, {...rest, mayLeave}, prices, {...options, isForBest})
  const ways = [
    ...(isTight(rest, prices, rather) ? [() => tightSearch(part(0.5), rest, prices)] : []),
    () => look(part(isForBest ? 0.7 : 0.3)),
    () => look(part(0.6), {share: 0.4, reprice: repriced(context)}),
    () => (isFull && isAll ? tightSearch(context, job, task.byArea) : look(context)),
  ]
  let found: Step[] | undefined
  let ended = false
  for (const way of ways) {
    const outcome = way()
    ended = outcome.ended
    if (outcome.found) {
      found = outcome.found
      mayLeave = lessLeft(task, packingOf(task, rest.counts, found).leftVolume)
    }
    if (ended || (found && !isForBest)) break
  }
  // What was cut ahead may stand in the way: that there is nothing, or nothing better, is then not shown.
  return {
    found: found && [...steps, ...found],
    ended: ended && (isAll || (found !== undefined && !isForBest)),
  }
}

/** Solve the relaxed cutting again where a search stands; not for the last few parts. */
const repriced =
  (context: Context): Reprice =>
  (job) => {
    if (total(job.counts) < 8) return undefined
    const {misfitVolume} = fitting(context.task, job)
    if (misfitVolume > job.mayLeave * (1 + 1e-12)) return 'none'
    if (misfitVolume > 0) return undefined
    const again = relax(context, {...job, bins: job.bins.filter(({count}) => count > 0)})
    return again.bound > 1 + 1e-9 ? 'none' : again.prices
  }
