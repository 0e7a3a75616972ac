import type {Context} from './context.ts'
import {Cutting, type Fill, type Step} from './cutting.ts'
import {listFills} from './fills.ts'
import {type FewMore, fewMore, OpenStrip} from './open-strip.ts'
import {spareWorth} from './prices.ts'
import {type Bin, type Job, lessLeft, type Prices} from './task.ts'

export interface Outcome {
  /** The best cutting found. */
  found?: Step[] | undefined
  /** Everything was looked through: there is no better one, or none at all. */
  ended: boolean
}

/** Better prices for a state of the search; `none` where they show that nothing can be found there. */
export type Reprice = (job: Job) => Prices | 'none' | undefined

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
export function search(context: Context, job: Job, prices: Prices, options: SearchOptions = {}): Outcome {
  return new Search(context, job, options).run(prices)
}

/** A way to go on: fill a strip of a bin, or, without one, leave out what there is of the widest kind. */
interface Option {
  loss: number
  bin?: Bin
  fill?: Fill
}

/** A state of the search: prices and what they bound, until when it may go on. */
interface State {
  prices: Prices
  more: FewMore[] | undefined
  pivot: number
  until: number
  /** What the bins are worth beyond the parts, by the prices. */
  spare: number
  slop: number
}

/** Full strips of any number of parts; more of them than this are not looked at. */
const fullStrips = {most: 3000, anyFill: false, mostParts: Infinity}

/** So many states that hold nothing are kept in mind. */
export const mostFailed = 200_000

class Search {
  private readonly context: Context
  private readonly options: SearchOptions
  private readonly cutting: Cutting
  private readonly mayLeaveSome: boolean
  // States that hold nothing, and the volume that could be left out there in vain.
  private readonly failed = new Map<string, number>()
  private limit: number
  private best: Step[] | undefined
  private complete = true

  constructor(context: Context, job: Job, options: SearchOptions) {
    this.context = context
    this.options = options
    this.cutting = new Cutting(context.task, job)
    this.mayLeaveSome = job.mayLeave > 0
    this.limit = job.mayLeave
  }

  run(prices: Prices): Outcome {
    const isEnough = this.visit(prices, undefined, this.context.effort.limit)
    return {found: this.best, ended: isEnough || this.complete}
  }

  /** Go on from where the cutting stands; true where what was found is enough. */
  private visit(outer: Prices, outerMore: FewMore[] | undefined, until: number): boolean {
    const {task, effort} = this.context
    const {counts, bins, steps, leftVolume} = this.cutting
    const pivot = this.cutting.next()
    if (pivot === counts.length) {
      this.best = [...steps]
      this.limit = lessLeft(task, leftVolume)
      return !this.options.isForBest || leftVolume === 0
    }
    if (this.isOver(until)) return false
    const mayLeave = this.mayLeave()
    const key = this.cutting.key() + (this.mayLeaveSome ? this.cutting.leavingKey() : '')
    effort.spend(20 + counts.length)
    if ((this.failed.get(key) ?? -1) >= mayLeave) return false
    const better = this.options.reprice?.({counts, bins, mayLeave})
    if (better !== 'none') {
      const prices = better ?? outer
      const {spare, held, needed} = spareWorth({counts, bins, mayLeave: 0}, prices)
      const slop = 1e-9 * Math.max(held, needed)
      const state: State = {prices, more: better ? undefined : outerMore, pivot, until, spare, slop}
      if (this.mayLose(state) >= -slop) return this.lookInto(state, key)
    }
    this.failed.set(key, mayLeave)
    return false
  }

  /** Go on from a state, and keep in mind that it holds nothing where all of it was looked through. */
  private lookInto(state: State, key: string): boolean {
    const wasComplete = this.complete
    this.complete = true
    if (this.goOn(state)) return true
    // What was looked through with less to leave out than now says nothing about now.
    if (this.complete && this.failed.size < mostFailed)
      this.failed.set(key, Math.max(this.mayLeave(), this.failed.get(key) ?? -1))
    this.complete &&= wasComplete
    return false
  }

  /** What may still be left out; a better cutting found meanwhile lowers it. */
  private mayLeave(): number {
    return this.limit - this.cutting.leftVolume
  }

  private mayLose({prices, spare}: State): number {
    return spare + prices.leftWorth * this.mayLeave()
  }

  private isOver(until: number): boolean {
    const {effort} = this.context
    const isOver = effort.over || effort.spent >= until
    if (isOver) this.complete = false
    return isOver
  }

  /** Try all options of a state, those that lose little first. */
  private goOn(state: State): boolean {
    const {context, cutting} = this
    const {worths} = state.prices
    state.more ??= context.task.lanes.map((_, lane) => fewMore(context, lane, cutting.counts, worths))
    let open = 0
    for (const {count} of cutting.bins) open += count
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
  private optionsOf({prices, more, pivot}: State, done: number, upTo: number): Option[] {
    const {task, effort} = this.context
    const {cutting} = this
    const {counts} = cutting
    const {worths, leftWorth, atWidth} = prices
    const part = task.parts[pivot]!
    const options: Option[] = []
    if (this.mayLeaveOut(pivot)) {
      const loss = counts[pivot]! * (leftWorth * part.volume - worths[pivot]!)
      if (loss > done && loss <= upTo) options.push({loss})
    }
    for (const bin of cutting.bins) {
      const {lane, width, count} = bin
      if (count === 0 || width < part.width || !task.lanes[lane]!.takes[pivot]) continue
      const base = atWidth(lane, width) - atWidth(lane, width - part.width)
      const range = {...fullStrips, atLeast: base - upTo, below: base - done, more: more![lane]!}
      const strip = new OpenStrip(task, {lane, pivot}, counts, worths)
      const isAll = listFills(strip, range, effort, (fill) => {
        if (!cutting.wantsOther(fill)) options.push({loss: base - fill.worth, bin, fill})
      })
      if (!isAll) this.complete = false
    }
    return options.sort((a, b) => a.loss - b.loss)
  }

  private mayLeaveOut(pivot: number): boolean {
    const out = this.cutting.counts[pivot]! * this.context.task.parts[pivot]!.volume
    return out <= this.mayLeave() * (1 + 1e-12)
  }

  /** A branch gets a share of what effort is left. */
  private untilOf({until}: State): number {
    const {share = 1} = this.options
    const {spent} = this.context.effort
    return share < 1 ? spent + Math.max((until - spent) * share, 2000) : until
  }

  private tryWithout(state: State): boolean {
    const {cutting} = this
    const {pivot, prices, more} = state
    if (!this.mayLeaveOut(pivot) || cutting.isWanted(pivot)) return false
    cutting.leaveOut(pivot)
    if (this.visit(prices, more, this.untilOf(state))) return true
    cutting.takeIn()
    return false
  }

  private tryFill(state: State, bin: Bin, fill: Fill): boolean {
    const rest = this.cutting.saw(bin, fill)
    if (this.visit(state.prices, state.more, this.untilOf(state))) return true
    this.cutting.unsaw(bin, rest)
    return false
  }
}
