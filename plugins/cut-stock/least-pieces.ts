import {type Cover, choosePieces, coverOf, firstCovers, meetsCovers} from './choose-pieces.ts'
import {allowed, type Context, Effort} from './context.ts'
import type {Packing} from './cutting.ts'
import {usedPieces} from './lay-out.ts'
import {type Packed, packInto} from './pack.ts'
import {mixedPrices} from './prices.ts'
import {packQuickly} from './quick-cut.ts'
import {relax} from './relax.ts'
import {allPieces, binsOf, choiceVolume, type Demand, type Job, type Prices} from './task.ts'

export interface Least {
  packing: Packing
  /** How many pieces of each kind. */
  chosen: number[]
  /** No choice of less volume holds as much. */
  proven: boolean
  /** Below this volume there is none. */
  bound: number
  /** What any choice that holds as much must hold. */
  covers: Cover[]
}

/** A choice that is not settled, and what share of it the relaxed cutting takes. */
interface Open {
  chosen: number[]
  volume: number
  share: number
}

/** So many choices are looked into, and so many at all, before the smallest are taken up again. */
const mostOpen = 24
const mostTried = 150

/** Where there are no more choices than this, each is looked into without the relaxed cutting of them all. */
const few = 32

/** What conditions are raised by to find a choice that holds the parts with ease. */
const margins = [0.02, 0.05, 0.1, 0.15, 0.2, 0.3]

/**
 * Find the pieces of least volume that the demand can be cut out of, from a first cutting of all pieces.
 * Choices are tried by rising volume; each that is shown to hold too little gives a condition that rules out others
 * (a cut, after Benders 1962). A choice that neither holds the parts nor is shown not to leaves the answer unproven.
 */
export function leastPieces(context: Context, demand: Demand, first: Packing): Least {
  return new LeastPieces(context, demand, first).find()
}

class LeastPieces {
  private readonly context: Context
  private readonly demand: Demand
  private readonly covers: Cover[]
  /** Choices that hold too little, and those that are not settled. */
  private readonly never: number[][] = []
  private open: Open[] = []
  private best: Pick<Least, 'packing' | 'chosen'>
  private least: number
  /** Every choice of less volume was looked at. */
  private level: number | undefined
  /** Prices of the relaxed cutting of all pieces, once it was asked for. */
  private prices: Prices | undefined

  constructor(context: Context, demand: Demand, packing: Packing) {
    const {task} = context
    this.context = context
    this.demand = demand
    this.covers = firstCovers(task, demand)
    this.best = {packing, chosen: usedPieces(task, packing.steps)}
    this.least = choiceVolume(task, this.best.chosen)
  }

  find(): Least {
    this.dropPieces((job) => packQuickly(this.context, job))
    const {effort} = this.context
    let end: 'through' | 'cut short' | undefined
    for (let tried = 0; !end && tried < mostTried && effort.spent < 0.5 * effort.limit; tried++)
      end = this.tryNext()
    if (end === 'cut short') return this.result(false, this.reached())
    const isThrough = end === 'through'
    if (isThrough && this.open.length === 0) return this.result(true, this.least)
    this.findLarger()
    this.settleOpen()
    const reached = this.reached()
    const isLowest = isThrough || this.least <= reached * (1 + 1e-9)
    return this.result(isLowest && this.open.length === 0, isLowest ? this.least : reached)
  }

  private result(proven: boolean, bound: number): Least {
    const {best, covers, open} = this
    return {...best, covers, proven, bound: Math.min(bound, ...open.map(({volume}) => volume))}
  }

  /** The volume up to which every choice was looked at. */
  private reached(): number {
    if (this.level !== undefined) return this.level
    const {task} = this.context
    const context = {task, effort: new Effort(50_000)}
    const lowest = choosePieces(context, this.covers.slice(0, 1), {under: this.least})
    return Array.isArray(lowest) ? choiceVolume(task, lowest) : 0
  }

  private isLess(volume: number): boolean {
    return volume < this.least * (1 - 1e-9)
  }

  private take(packing: Packing, chosen: number[]): void {
    this.best = {packing, chosen}
    this.least = choiceVolume(this.context.task, chosen)
    this.open = this.open.filter(({volume}) => this.isLess(volume))
  }

  private jobOf(chosen: readonly number[]): Job {
    return {...this.demand, bins: binsOf(this.context.task, chosen)}
  }

  private packAtOnce(chosen: readonly number[]): Packing | undefined {
    const {context, prices} = this
    const job = this.jobOf(chosen)
    return packQuickly(context, job) ?? (prices && packQuickly(context, job, prices))
  }

  private pack(job: Job, share: number): Packed {
    return packInto(allowed(this.context, this.context.effort.limit * share), job)
  }

  /** Do without pieces, the largest first, as long as the rest meets the covers and `pack` finds that it will do. */
  private dropPieces(pack: (job: Job) => Packing | undefined): void {
    const {pieces} = this.context.task
    const order = pieces.map((_, p) => p).sort((a, b) => pieces[b]!.volume - pieces[a]!.volume || b - a)
    for (const p of order)
      for (let step = this.best.chosen[p]!; step >= 1; ) {
        const chosen = this.best.chosen.map((n, at) => (at === p ? n - step : n))
        const packing =
          chosen[p]! >= 0 && meetsCovers(this.covers, chosen) ? pack(this.jobOf(chosen)) : undefined
        if (packing) this.take(packing, chosen)
        else step >>= 1
      }
  }

  /** Look at the next choice by rising volume: whether it holds the parts at once, cannot, or stays open. */
  private tryNext(): 'through' | 'cut short' | undefined {
    const {context, covers, never, least} = this
    const {task, effort} = context
    const not = (chosen: readonly number[]) => this.open.some((one) => isSame(one.chosen, chosen))
    const chosen = choosePieces(context, covers, {not, never, under: least})
    if (chosen === 'cut short') return chosen
    if (!chosen || isSame(chosen, this.best.chosen)) return 'through'
    const volume = choiceVolume(task, chosen)
    this.level = volume
    const quick = this.packAtOnce(chosen)
    if (quick) this.take(quick, chosen)
    // What is as large as what was found already is only worth a quick look.
    if (quick || !this.isLess(volume)) return 'through'
    if (!this.prices && !this.isFew()) return this.relaxAll()
    const isLookedInto = this.open.length < mostOpen && effort.spent < 0.2 * effort.limit
    const packed: Packed = isLookedInto ? this.pack(this.jobOf(chosen), 1 / 400) : {ended: false}
    const {packing, ended, cover, share = 1} = packed
    if (packing) this.take(packing, chosen)
    if (packing) return 'through'
    if (ended) never.push(chosen)
    else this.open.push({chosen, volume, share})
    if (cover) covers.push(cover)
    return effort.over ? 'cut short' : undefined
  }

  private isFew(): boolean {
    return allPieces(this.context.task).reduce((product, n) => product * (n + 1), 1) <= few
  }

  /** Take the condition and the prices that the relaxed cutting of all pieces gives. */
  private relaxAll(): undefined {
    const {context, demand} = this
    const {task} = context
    const job = this.jobOf(allPieces(task))
    const volumes = task.pieces.map(({volume}) => volume)
    const {prices} = relax(context, job, volumes)
    this.covers.push(coverOf(context, demand, prices))
    this.prices = mixedPrices(prices, task.byArea, 0.3, job.bins)
  }

  /** Find something larger that does hold the parts, so that the answer is not far off where nothing smaller is settled. */
  private findLarger(): void {
    const {context, covers, never} = this
    this.dropPieces((job) => packQuickly(context, job) ?? this.pack(job, 1 / 400).packing)
    for (const margin of margins) {
      const eased = covers.map((cover) => ({...cover, needed: cover.needed * (1 + margin)}))
      const own = allowed(context, context.effort.limit / 100)
      const chosen = choosePieces(own, eased, {never, under: this.least * (1 - 1e-9)})
      if (!Array.isArray(chosen)) return
      const packing = this.packAtOnce(chosen) ?? this.pack(this.jobOf(chosen), 1 / 100).packing
      if (packing) this.take(packing, chosen)
      if (packing) return
    }
  }

  /** Spend what effort is left on the choices that stay open, the smallest and the roomiest first. */
  private settleOpen(): void {
    const {effort} = this.context
    for (let share = 0.1; this.open.length > 0 && !effort.over; share *= 2) {
      this.open.sort((a, b) => a.volume - b.volume || a.share - b.share)
      for (const one of [...this.open]) {
        if (!this.isLess(one.volume) || effort.over) break
        const {packing, ended} = this.pack(this.jobOf(one.chosen), share)
        if (packing || ended) this.open = this.open.filter((other) => other !== one)
        if (packing) this.take(packing, one.chosen)
      }
    }
  }
}

const isSame = (one: readonly number[], other: readonly number[]) => one.every((n, p) => n === other[p])
