import type {Effort} from './effort.ts'
import {entryAt} from './knapsack.ts'
import type {Task} from './task.ts'

/** A filling of one strip: how many of each kind, and what they are worth. */
export interface Fill {
  kinds: number[]
  copies: number[]
  worth: number
}

/** The kinds from `pivot` on that are wanted and that strips of a lane may hold. */
function usableKinds(task: Task, lane: number, pivot: number, counts: ArrayLike<number>): number[] {
  const {length, takes} = task.lanes[lane]!
  const kinds: number[] = []
  for (let at = pivot; at < counts.length; at++)
    if (counts[at]! > 0 && takes[at] && task.parts[at]!.length <= length) kinds.push(at)
  return kinds
}

/** A strip as wide as its pivot, open to be filled: what may go into it, kind by kind, and what of it is in. */
class OpenStrip {
  readonly capacity: number
  readonly kinds: readonly number[]
  readonly lengths: number[] = []
  readonly worths: number[] = []
  /** How many there are of each kind, and how many are in. */
  readonly has: number[] = []
  readonly copies: number[] = []
  /** The best worth a length from each kind on; nothing past the last. */
  readonly ratios: number[]

  constructor(task: Task, lane: number, pivot: number, counts: Int32Array, worths: ArrayLike<number>) {
    this.capacity = task.lanes[lane]!.length
    this.kinds = usableKinds(task, lane, pivot, counts)
    for (const at of this.kinds) {
      this.lengths.push(task.parts[at]!.length)
      this.worths.push(worths[at]!)
      this.has.push(counts[at]!)
      this.copies.push(0)
    }
    this.ratios = [...this.lengths, 0]
    for (let k = this.kinds.length - 1; k >= 0; k--)
      this.ratios[k] = Math.max(this.ratios[k + 1]!, this.worths[k]! / this.lengths[k]!)
  }

  /** The filling that so many copies of each kind make. */
  fillOf(copies: readonly number[], worth: number): Fill {
    const fill: Fill = {kinds: [], copies: [], worth}
    for (let k = 0; k < copies.length; k++)
      if (copies[k]! > 0) {
        fill.kinds.push(this.kinds[k]!)
        fill.copies.push(copies[k]!)
      }
    return fill
  }
}

/** Which fillings to list: by worth, how many at most, also those that more would fit into, of how many parts at most. */
interface FillRange {
  atLeast: number
  below: number
  most: number
  anyFill: boolean
  mostParts?: number
}

/**
 * List the fillings of a strip as wide as `pivot` that hold it, worth at least `atLeast` and less than `below`, into
 * which nothing more would fit, unless any will do. False where the list ended at `most` or the effort ran out.
 */
export function listFills(
  task: Task,
  lane: number,
  pivot: number,
  counts: Int32Array,
  worths: ArrayLike<number>,
  more: FewMore,
  range: FillRange,
  effort: Effort,
  found: (fill: Fill) => void,
): boolean {
  const strip = new OpenStrip(task, lane, pivot, counts, worths)
  return strip.kinds[0] !== pivot || new Lister(strip, more, range, effort, found).list()
}

/** Goes through the fillings of one strip, depth first. */
class Lister {
  private readonly strip: OpenStrip
  private readonly more: FewMore
  private readonly range: FillRange
  private readonly effort: Effort
  private readonly found: (fill: Fill) => void
  /** The shortest length from each kind on. */
  private readonly shortest: number[]
  private listed = 0
  private nodes = 0
  private complete = true

  constructor(
    strip: OpenStrip,
    more: FewMore,
    range: FillRange,
    effort: Effort,
    found: (fill: Fill) => void,
  ) {
    this.strip = strip
    this.more = more
    this.range = range
    this.effort = effort
    this.found = found
    this.shortest = [...strip.lengths, Infinity]
    for (let k = strip.lengths.length - 1; k >= 0; k--)
      this.shortest[k] = Math.min(this.shortest[k + 1]!, this.shortest[k]!)
  }

  list(): boolean {
    const {capacity, kinds} = this.strip
    this.visit(0, capacity, 0, this.range.mostParts ?? Infinity)
    this.effort.spend(kinds.length + (this.nodes % 1000) / 2 + 10 * this.listed)
    return this.complete
  }

  private visit(from: number, room: number, gained: number, left: number): void {
    if (!this.complete) return
    const {more} = this
    const {lengths, worths, has, copies, ratios} = this.strip
    const {atLeast, below} = this.range
    const n = lengths.length
    let k = from
    while (k > 0 && k < n && lengths[k]! > room) k++
    if (++this.nodes % 1000 === 0) {
      this.effort.spend(500)
      if (this.effort.over) this.complete = false
    }
    const least = this.shortest[k]!
    const few =
      left === 1 || room < 2 * least
        ? more.one(room)
        : left === 2 || room < 3 * least
          ? more.two(room)
          : Infinity
    if (gained + Math.min(room * ratios[k]!, few) < atLeast) return
    if (k === n || left === 0 || room < least) {
      if (gained >= atLeast && gained < below) this.report(room, gained)
      return
    }
    const length = lengths[k]!
    const fits = Math.min(has[k]!, Math.floor(room / length), left)
    for (let c = fits; c >= (k === 0 ? 1 : 0); c--) {
      copies[k] = c
      this.visit(k + 1, room - c * length, gained + c * worths[k]!, left - c)
    }
    copies[k] = 0
  }

  private report(room: number, worth: number): void {
    const {strip, range} = this
    const {lengths, has, copies} = strip
    if (!range.anyFill)
      for (let j = 0; j < copies.length; j++) if (copies[j]! < has[j]! && lengths[j]! <= room) return
    if (this.listed++ >= range.most) this.complete = false
    else this.found(strip.fillOf(copies, worth))
  }
}

/** The most that one more part, or two, could be worth in some room, whatever kinds are left. */
export interface FewMore {
  one: (room: number) => number
  two: (room: number) => number
}

/** Pairs are listed up to this many kinds. */
const mostForPairs = 120

/** Prepare bounds on what one or two more parts can be worth, for a lane and the kinds that are wanted. */
export function fewMore(
  task: Task,
  lane: number,
  counts: ArrayLike<number>,
  worths: ArrayLike<number>,
  effort: Effort,
): FewMore {
  const ones: Sized[] = []
  for (const at of usableKinds(task, lane, 0, counts))
    ones.push({size: task.parts[at]!.length, worth: worths[at]!})
  const hasPairs = ones.length <= mostForPairs
  effort.spend(hasPairs ? (ones.length * (ones.length + 1)) / 2 : ones.length)
  const one = stairs(ones)
  let two: FewMore['two'] | undefined
  return {
    one,
    two: (room) => {
      two ??= hasPairs ? stairs(withPairs(ones)) : () => Infinity
      return two(room)
    },
  }
}

interface Sized {
  size: number
  worth: number
}

function withPairs(ones: readonly Sized[]): Sized[] {
  const all = [...ones]
  for (let i = 0; i < ones.length; i++)
    for (let j = i; j < ones.length; j++)
      all.push({size: ones[i]!.size + ones[j]!.size, worth: ones[i]!.worth + ones[j]!.worth})
  return all
}

/** The most that anything up to a size is worth. */
function stairs(items: readonly Sized[]): (room: number) => number {
  const sorted = [...items].sort((a, b) => a.size - b.size)
  const sizes: number[] = []
  const best: number[] = []
  let most = 0
  for (const {size, worth} of sorted) {
    if (worth <= most) continue
    most = worth
    sizes.push(size)
    best.push(most)
  }
  return (room) => (sizes.length === 0 || room < sizes[0]! ? 0 : best[entryAt(sizes, room)]!)
}

/** So many fillings are looked at before the best of them is taken. */
const mostNodes = 400

/**
 * Fill a strip as wide as the pivot with what is worth most, widest and longest first; the first filling worth
 * `enough` ends it.
 */
export function fillWell(
  task: Task,
  lane: number,
  pivot: number,
  counts: Int32Array,
  worths: ArrayLike<number>,
  enough: number,
  effort: Effort,
): Fill {
  const strip = new OpenStrip(task, lane, pivot, counts, worths)
  const filler = new Filler(strip, enough)
  filler.visit(0, strip.capacity, 0)
  effort.spend(filler.nodes + strip.kinds.length)
  return strip.fillOf(filler.best, filler.most)
}

/** Looks through the fillings of one strip, depth first. */
class Filler {
  nodes = 0
  most = -1
  best: readonly number[] = []
  private readonly strip: OpenStrip
  private readonly enough: number

  constructor(strip: OpenStrip, enough: number) {
    this.strip = strip
    this.enough = enough
  }

  /** Tell whether it was enough. */
  visit(from: number, room: number, worth: number): boolean {
    const {lengths, worths, has, copies, ratios} = this.strip
    const n = lengths.length
    let k = from
    while (k > 0 && k < n && lengths[k]! > room) k++
    this.nodes++
    if (worth > this.most) {
      this.best = copies.slice()
      this.most = worth
      if (worth >= this.enough) return true
    }
    if (this.nodes > mostNodes) return true
    if (k === n || worth + room * ratios[k]! <= this.most) return false
    const length = lengths[k]!
    const fits = Math.min(has[k]!, Math.floor(room / length))
    for (let c = fits; c >= (k === 0 ? 1 : 0); c--) {
      copies[k] = c
      if (this.visit(k + 1, room - c * length, worth + c * worths[k]!)) return true
    }
    copies[k] = 0
    return false
  }
}
