import type {Effort} from './effort.ts'
import {type FewMore, type Fill, fewMore, listFills} from './fills.ts'
import {restOf, stateKey} from './search-state.ts'
import type {Bin, Task} from './task.ts'

/** A strip sawn off a bin that was `from` wide. */
export interface Step {
  lane: number
  from: number
  width: number
  kinds: number[]
  copies: number[]
}

export type Verdict = {found: Step[]} | 'none' | 'unknown'

/** Worths that bound what bins can hold: of each kind, of a rest of some width by lane, of a volume left out. */
export interface Prices {
  worths: ArrayLike<number>
  atWidth: (lane: number, width: number) => number
  leftWorth: number
}

/** Better prices for a state of the search; `none` where they show that nothing can be found there. */
export type Reprice = (counts: Int32Array, bins: readonly Bin[], leave: number) => Prices | 'none' | undefined

/**
 * Look for a way to cut all parts but `mayLeave` of volume out of the bins, widest part first.
 * Prices tell how much may still be lost; a branch that loses more is not entered, so an ended search is a proof that
 * there is none. `share` of the effort left goes to each branch at most; 1 for a search that ends with a proof.
 */
export function search(
  task: Task,
  startCounts: ArrayLike<number>,
  startBins: readonly Bin[],
  startPrices: Prices,
  mayLeave: number,
  effort: Effort,
  {share = 1, reprice}: {share?: number; reprice?: Reprice} = {},
): Verdict {
  const counts = Int32Array.from(startCounts)
  const narrowest = Math.min(...task.parts.map((part) => part.width))
  const bins: Bin[] = startBins.map((bin) => ({...bin}))
  const steps: Step[] = []
  const failed = new Set<string>()
  let complete = true

  const visit = (outer: Prices, leave: number, until: number, moreOf: FewMore[]): boolean => {
    let pivot = 0
    while (pivot < counts.length && counts[pivot] === 0) pivot++
    if (pivot === counts.length) return true
    if (effort.over || effort.spent >= until) {
      complete = false
      return false
    }
    const key = stateKey(counts, bins, narrowest, mayLeave > 0 ? leave : 0)
    effort.spend(20 + counts.length)
    if (failed.has(key)) return false
    const better = reprice?.(counts, bins, leave)
    if (better === 'none') {
      failed.add(key)
      return false
    }
    const prices = better ?? outer
    const more = better
      ? task.lanes.map((_, lane) => fewMore(task, lane, counts, better.worths, effort))
      : moreOf
    const {worths, leftWorth} = prices
    let held = 0
    let needed = -leftWorth * leave
    let open = 0
    for (const bin of bins) {
      held += bin.count * prices.atWidth(bin.lane, bin.width)
      open += bin.count
    }
    for (let at = 0; at < counts.length; at++) needed += counts[at]! * worths[at]!
    const slop = 1e-9 * Math.max(held, needed)
    const budget = held - needed
    if (budget < -slop) {
      failed.add(key)
      return false
    }
    const wasComplete = complete
    complete = true
    const part = task.parts[pivot]!
    let done = -Infinity
    for (const portion of [2 / open, 8 / open, 1]) {
      const upTo = Math.min(budget * portion, budget) + slop
      if (upTo <= done) continue
      const options: {loss: number; bin?: Bin; fill?: Fill}[] = []
      if (mayLeave > 0 && counts[pivot]! * part.volume <= leave * (1 + 1e-12)) {
        const loss = counts[pivot]! * (leftWorth * part.volume - worths[pivot]!)
        if (loss > done && loss <= upTo) options.push({loss})
      }
      for (const bin of bins) {
        if (bin.count === 0 || bin.width < part.width || !task.lanes[bin.lane]!.takes[pivot]) continue
        const base = prices.atWidth(bin.lane, bin.width) - prices.atWidth(bin.lane, bin.width - part.width)
        const range = {atLeast: base - upTo, below: base - done, most: 3000, anyFill: false}
        const all = listFills(task, bin.lane, pivot, counts, worths, more[bin.lane]!, range, effort, (fill) =>
          options.push({loss: base - fill.worth, bin, fill}),
        )
        if (!all) complete = false
      }
      done = upTo
      options.sort((a, b) => a.loss - b.loss)
      for (const {bin, fill} of options) {
        const now = effort.spent
        if (effort.over || now >= until) {
          complete = false
          break
        }
        const childUntil = share < 1 ? now + Math.max((until - now) * share, 2000) : until
        if (!bin || !fill) {
          const all = counts[pivot]!
          counts[pivot] = 0
          if (visit(prices, leave - all * part.volume, childUntil, more)) return true
          counts[pivot] = all
        } else {
          const rest = restOf(bins, bin.lane, bin.width - part.width)
          bin.count--
          rest.count++
          fill.kinds.forEach((at, k) => {
            counts[at]! -= fill.copies[k]!
          })
          steps.push({
            lane: bin.lane,
            from: bin.width,
            width: part.width,
            kinds: fill.kinds,
            copies: fill.copies,
          })
          if (visit(prices, leave, childUntil, more)) return true
          steps.pop()
          fill.kinds.forEach((at, k) => {
            counts[at]! += fill.copies[k]!
          })
          rest.count--
          bin.count++
        }
      }
      if (effort.over || effort.spent >= until) {
        complete = false
        break
      }
    }
    if (complete && failed.size < 200_000) failed.add(key)
    complete &&= wasComplete
    return false
  }
  const more = task.lanes.map((_, lane) => fewMore(task, lane, counts, startPrices.worths, effort))
  if (visit(startPrices, mayLeave, effort.limit, more)) return {found: steps}
  return complete ? 'none' : 'unknown'
}
