import type {Effort} from './effort.ts'
import {type FewMore, type Fill, fewMore, listFills} from './fills.ts'
import {restOf, stateKey} from './search-state.ts'
import {type Bin, lessLeft, type Prices, type Task} from './task.ts'

/** Tell whether a part that is left out could go into a strip, alone or for a smaller one, so that more is placed. */
function couldReplace(
  {parts, lanes}: Task,
  at: number,
  lane: number,
  width: number,
  {kinds, copies}: Pick<Fill, 'kinds' | 'copies'>,
): boolean {
  const part = parts[at]!
  const {length, takes} = lanes[lane]!
  if (!takes[at] || part.width > width) return false
  let room = length
  for (let k = 0; k < kinds.length; k++) room -= copies[k]! * parts[kinds[k]!]!.length
  if (room >= part.length) return true
  for (const kind of kinds) {
    const other = parts[kind]!
    if (other.volume < part.volume * (1 - 1e-9) && room + other.length >= part.length) return true
  }
  return false
}

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

interface SearchOptions {
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
  counts: ArrayLike<number>,
  bins: readonly Bin[],
  prices: Prices,
  mayLeave: number,
  effort: Effort,
  options: SearchOptions = {},
): Outcome {
  return new Search(task, counts, bins, mayLeave, effort, options).run(prices)
}

/** A way to go on: fill a strip of a bin, or, without one, leave out what there is of the widest kind. */
interface Option {
  loss: number
  bin?: Bin
  fill?: Fill
}

/** A state of the search: prices and what they bound, the volume left out so far, until when it may go on. */
interface State {
  prices: Prices
  more: FewMore[] | undefined
  pivot: number
  leftVolume: number
  until: number
  /** What the bins are worth beyond the parts, by the prices. */
  spare: number
  slop: number
}

class Search {
  private readonly task: Task
  private readonly counts: Int32Array
  private readonly bins: Bin[]
  private readonly effort: Effort
  private readonly share: number
  private readonly reprice: Reprice | undefined
  private readonly isForBest: boolean
  private readonly mayLeaveSome: boolean
  private readonly steps: Step[] = []
  private readonly leftOut: number[] = []
  // States that hold nothing, and the volume that could be left out there in vain.
  private readonly failed = new Map<string, number>()
  private limit: number
  private best: Step[] | undefined
  private complete = true

  constructor(
    task: Task,
    counts: ArrayLike<number>,
    bins: readonly Bin[],
    mayLeave: number,
    effort: Effort,
    {share = 1, reprice, isForBest = false}: SearchOptions,
  ) {
    this.task = task
    this.counts = Int32Array.from(counts)
    this.bins = bins.map((bin) => ({...bin}))
    this.effort = effort
    this.share = share
    this.reprice = reprice
    this.isForBest = isForBest
    this.mayLeaveSome = mayLeave > 0
    this.limit = mayLeave
  }

  run(prices: Prices): Outcome {
    const isEnough = this.visit(prices, undefined, 0, this.effort.limit)
    return {...(this.best && {found: this.best}), ended: isEnough || this.complete}
  }

  /** Go on from where the counts and bins stand; true where what was found is enough. */
  private visit(outer: Prices, outerMore: FewMore[] | undefined, leftVolume: number, until: number): boolean {
    const {task, counts, bins, effort} = this
    let pivot = 0
    while (pivot < counts.length && counts[pivot] === 0) pivot++
    if (pivot === counts.length) {
      this.best = [...this.steps]
      this.limit = lessLeft(task, leftVolume)
      return !this.isForBest || leftVolume === 0
    }
    if (this.isOver(until)) return false
    const leave = this.limit - leftVolume
    const key = stateKey(task, counts, bins) + (this.mayLeaveSome ? this.leavingKey() : '')
    effort.spend(20 + counts.length)
    if ((this.failed.get(key) ?? -1) >= leave) return false
    const better = this.reprice?.(counts, bins, leave)
    if (better === 'none') {
      this.failed.set(key, leave)
      return false
    }
    const prices = better ?? outer
    let held = 0
    for (const bin of bins) if (bin.count > 0) held += bin.count * prices.atWidth(bin.lane, bin.width)
    let worth = 0
    for (let at = 0; at < counts.length; at++) worth += counts[at]! * prices.worths[at]!
    const slop = 1e-9 * Math.max(held, worth)
    const more = better ? undefined : outerMore
    const state: State = {prices, more, pivot, leftVolume, until, spare: held - worth, slop}
    if (this.mayLose(state) < -slop) {
      this.failed.set(key, leave)
      return false
    }
    const wasComplete = this.complete
    this.complete = true
    if (this.goOn(state)) return true
    // What was looked through with less to leave out than now says nothing about now.
    if (this.complete && this.failed.size < 200_000)
      this.failed.set(key, Math.max(this.limit - leftVolume, this.failed.get(key) ?? -1))
    this.complete &&= wasComplete
    return false
  }

  /** What may still be lost; a better cutting found meanwhile lowers it. */
  private mayLose({prices, leftVolume, spare}: State): number {
    return spare + prices.leftWorth * (this.limit - leftVolume)
  }

  private isOver(until: number): boolean {
    const isOver = this.effort.over || this.effort.spent >= until
    if (isOver) this.complete = false
    return isOver
  }

  /** Try all options of a state, those that lose little first. */
  private goOn(state: State): boolean {
    const {task, counts, effort} = this
    state.more ??= task.lanes.map((_, lane) => fewMore(task, lane, counts, state.prices.worths, effort))
    let open = 0
    for (const bin of this.bins) open += bin.count
    let done = -Infinity
    for (const portion of [2 / open, 8 / open, 1]) {
      const budget = this.mayLose(state)
      const upTo = Math.min(budget * portion, budget) + state.slop
      if (upTo <= done) continue
      for (const option of this.optionsOf(state, done, upTo)) {
        if (this.isOver(state.until)) return false
        if (option.loss > this.mayLose(state) + state.slop) break
        if (option.fill ? this.tryFill(state, option.bin!, option.fill) : this.tryWithout(state)) return true
      }
      done = upTo
      if (this.isOver(state.until)) return false
    }
    return false
  }

  /** The options that lose more than `done` and at most `upTo`, by rising loss. */
  private optionsOf({prices, more, pivot, leftVolume}: State, done: number, upTo: number): Option[] {
    const {task, counts, leftOut} = this
    const {worths, leftWorth} = prices
    const part = task.parts[pivot]!
    const options: Option[] = []
    if (this.mayLeaveOut(pivot, leftVolume)) {
      const loss = counts[pivot]! * (leftWorth * part.volume - worths[pivot]!)
      if (loss > done && loss <= upTo) options.push({loss})
    }
    for (const bin of this.bins) {
      if (bin.count === 0 || bin.width < part.width || !task.lanes[bin.lane]!.takes[pivot]) continue
      const base = prices.atWidth(bin.lane, bin.width) - prices.atWidth(bin.lane, bin.width - part.width)
      const range = {atLeast: base - upTo, below: base - done, most: 3000, anyFill: false}
      const lane = more![bin.lane]!
      const all = listFills(task, bin.lane, pivot, counts, worths, lane, range, this.effort, (fill) => {
        for (const at of leftOut) if (couldReplace(task, at, bin.lane, part.width, fill)) return
        options.push({loss: base - fill.worth, bin, fill})
      })
      if (!all) this.complete = false
    }
    return options.sort((a, b) => a.loss - b.loss)
  }

  private mayLeaveOut(pivot: number, leftVolume: number): boolean {
    const out = this.counts[pivot]! * this.task.parts[pivot]!.volume
    return out <= (this.limit - leftVolume) * (1 + 1e-12)
  }

  /** A branch gets a share of what effort is left. */
  private untilOf({until}: State): number {
    const {share, effort} = this
    return share < 1 ? effort.spent + Math.max((until - effort.spent) * share, 2000) : until
  }

  private tryWithout(state: State): boolean {
    const {task, counts, leftOut} = this
    const {pivot, leftVolume, prices, more} = state
    if (!this.mayLeaveOut(pivot, leftVolume)) return false
    for (const step of this.steps) if (couldReplace(task, pivot, step.lane, step.width, step)) return false
    const all = counts[pivot]!
    counts[pivot] = 0
    leftOut.push(pivot)
    const left = leftVolume + all * task.parts[pivot]!.volume
    if (this.visit(prices, more, left, this.untilOf(state))) return true
    leftOut.pop()
    counts[pivot] = all
    return false
  }

  private tryFill(state: State, bin: Bin, {kinds, copies}: Fill): boolean {
    const {counts, steps} = this
    const {width} = this.task.parts[state.pivot]!
    const rest = restOf(this.bins, bin.lane, bin.width - width)
    bin.count--
    rest.count++
    for (let k = 0; k < kinds.length; k++) counts[kinds[k]!]! -= copies[k]!
    steps.push({lane: bin.lane, from: bin.width, width, kinds, copies})
    if (this.visit(state.prices, state.more, state.leftVolume, this.untilOf(state))) return true
    steps.pop()
    for (let k = 0; k < kinds.length; k++) counts[kinds[k]!]! += copies[k]!
    rest.count--
    bin.count++
    return false
  }

  /** What decides which parts may be left out from here on: those left out, and those that some strip would rather hold. */
  private leavingKey(): string {
    const {task, counts, steps} = this
    const codes = [separator, ...this.leftOut, separator]
    for (let at = 0; at < counts.length; at++) {
      if (counts[at] === 0) continue
      for (const step of steps)
        if (couldReplace(task, at, step.lane, step.width, step)) {
          codes.push(at)
          break
        }
    }
    return String.fromCharCode(...codes)
  }
}

/** No kind of part and no bin has this number. */
const separator = 0xffff
