import type {Effort} from './effort.ts'
import {type FewMore, type Fill, fewMore, listFills} from './fills.ts'
import {lessLeft} from './less-left.ts'
import type {Prices} from './prices.ts'
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

export interface Outcome {
  /** The best cutting found. */
  found?: Step[]
  /** Everything was looked through: there is no better one, or none at all. */
  ended: boolean
}

/** Better prices for a state of the search; `none` where they show that nothing can be found there. */
export type Reprice = (counts: Int32Array, bins: readonly Bin[], leave: number) => Prices | 'none' | undefined

export interface SearchOptions {
  /** A branch gets this share of the effort that is left, so that no early choice takes it all; 1: all it needs. */
  share?: number
  reprice?: Reprice
  /** Go on for a cutting that leaves less, until there is none. */
  isForBest?: boolean
}

/**
 * Look for a way to cut all parts but `mayLeave` of volume out of the bins, widest part first.
 * Prices tell how much may still be lost; a branch that loses more is not entered. Nor is one in which a part left out
 * could take the place of a smaller one.
 */
export function search(
  task: Task,
  startCounts: ArrayLike<number>,
  startBins: readonly Bin[],
  startPrices: Prices,
  mayLeave: number,
  effort: Effort,
  {share = 1, reprice, isForBest = false}: SearchOptions = {},
): Outcome {
  const counts = Int32Array.from(startCounts)
  const narrowest = Math.min(...task.parts.map((part) => part.width))
  const bins: Bin[] = startBins.map((bin) => ({...bin}))
  const steps: Step[] = []
  const leftOut: number[] = []
  // States that hold nothing, and the volume that could be left out there in vain.
  const failed = new Map<string, number>()
  let limit = mayLeave
  let best: Step[] | undefined
  let complete = true

  const visit = (outer: Prices, leftVolume: number, until: number, moreOf: FewMore[]): boolean => {
    let pivot = 0
    while (pivot < counts.length && counts[pivot] === 0) pivot++
    if (pivot === counts.length) {
      best = [...steps]
      limit = lessLeft(task, leftVolume)
      return !isForBest || leftVolume === 0
    }
    if (effort.over || effort.spent >= until) {
      complete = false
      return false
    }
    const leave = limit - leftVolume
    const key =
      stateKey(counts, bins, narrowest) + (mayLeave > 0 ? leavingKey(task, counts, leftOut, steps) : '')
    effort.spend(20 + counts.length)
    if ((failed.get(key) ?? -1) >= leave) return false
    const better = reprice?.(counts, bins, leave)
    if (better === 'none') {
      failed.set(key, leave)
      return false
    }
    const prices = better ?? outer
    const more = better
      ? task.lanes.map((_, lane) => fewMore(task, lane, counts, better.worths, effort))
      : moreOf
    const {worths, leftWorth} = prices
    let held = 0
    let worth = 0
    let open = 0
    for (const bin of bins) {
      held += bin.count * prices.atWidth(bin.lane, bin.width)
      open += bin.count
    }
    for (let at = 0; at < counts.length; at++) worth += counts[at]! * worths[at]!
    const slop = 1e-9 * Math.max(held, worth)
    const budgetNow = () => held - worth + leftWorth * (limit - leftVolume)
    if (budgetNow() < -slop) {
      failed.set(key, leave)
      return false
    }
    const wasComplete = complete
    complete = true
    const part = task.parts[pivot]!
    let done = -Infinity
    for (const portion of [2 / open, 8 / open, 1]) {
      const budget = budgetNow()
      const upTo = Math.min(budget * portion, budget) + slop
      if (upTo <= done) continue
      const options: {loss: number; bin?: Bin; fill?: Fill}[] = []
      const out = counts[pivot]! * part.volume
      if (out <= (limit - leftVolume) * (1 + 1e-12)) {
        const loss = counts[pivot]! * (leftWorth * part.volume - worths[pivot]!)
        if (loss > done && loss <= upTo) options.push({loss})
      }
      for (const bin of bins) {
        if (bin.count === 0 || bin.width < part.width || !task.lanes[bin.lane]!.takes[pivot]) continue
        const base = prices.atWidth(bin.lane, bin.width) - prices.atWidth(bin.lane, bin.width - part.width)
        const range = {atLeast: base - upTo, below: base - done, most: 3000, anyFill: false}
        const all = listFills(
          task,
          bin.lane,
          pivot,
          counts,
          worths,
          more[bin.lane]!,
          range,
          effort,
          (fill) => {
            if (!leftOut.some((at) => couldReplace(task, at, {lane: bin.lane, width: part.width, ...fill})))
              options.push({loss: base - fill.worth, bin, fill})
          },
        )
        if (!all) complete = false
      }
      done = upTo
      options.sort((a, b) => a.loss - b.loss)
      for (const {loss, bin, fill} of options) {
        const now = effort.spent
        if (effort.over || now >= until) {
          complete = false
          break
        }
        if (loss > budgetNow() + slop) break
        const childUntil = share < 1 ? now + Math.max((until - now) * share, 2000) : until
        if (!bin || !fill) {
          if (out > (limit - leftVolume) * (1 + 1e-12)) continue
          if (steps.some((step) => couldReplace(task, pivot, step))) continue
          const all = counts[pivot]!
          counts[pivot] = 0
          leftOut.push(pivot)
          if (visit(prices, leftVolume + out, childUntil, more)) return true
          leftOut.pop()
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
          if (visit(prices, leftVolume, childUntil, more)) return true
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
    // What was looked through with less to leave out than now says nothing about now.
    if (complete && failed.size < 200_000)
      failed.set(key, Math.max(limit - leftVolume, failed.get(key) ?? -1))
    complete &&= wasComplete
    return false
  }
  const more = task.lanes.map((_, lane) => fewMore(task, lane, counts, startPrices.worths, effort))
  const isEnough = visit(startPrices, 0, effort.limit, more)
  return {...(best && {found: best}), ended: isEnough || complete}
}

/** What decides which parts may be left out from here on: those left out, and those that some strip would rather hold. */
const leavingKey = (
  task: Task,
  counts: Int32Array,
  leftOut: readonly number[],
  steps: readonly Step[],
): string => {
  const held: number[] = []
  for (let at = 0; at < counts.length; at++)
    if (counts[at]! > 0 && steps.some((step) => couldReplace(task, at, step))) held.push(at)
  return `|${leftOut.join()}|${held.join()}`
}

/** Tell whether a part that is left out could go into a strip, alone or for a smaller one, so that more is placed. */
function couldReplace(
  task: Task,
  at: number,
  {lane, width, kinds, copies}: Pick<Step, 'lane' | 'width' | 'kinds' | 'copies'>,
): boolean {
  const part = task.parts[at]!
  const {length, takes} = task.lanes[lane]!
  if (!takes[at] || part.width > width) return false
  let room = length
  for (let k = 0; k < kinds.length; k++) room -= copies[k]! * task.parts[kinds[k]!]!.length
  if (room >= part.length) return true
  return kinds.some((kind) => {
    const other = task.parts[kind]!
    return other.volume < part.volume * (1 - 1e-9) && room + other.length >= part.length
  })
}
