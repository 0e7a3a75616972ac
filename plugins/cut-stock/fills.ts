import type {Effort} from './context.ts'
import type {Fill} from './cutting.ts'
import type {FewMore, OpenStrip} from './open-strip.ts'

/**
 * Which fillings to list: worth at least `atLeast` and less than `below`, at most so many of them, also those into
 * which more would fit, of how many parts at most; and what a few more parts are worth at most.
 */
export interface FillRange {
  atLeast: number
  below: number
  most: number
  anyFill: boolean
  mostParts: number
  more: FewMore
}

/** List the fillings of a strip that hold its first kind. False where the list ended at `most` or the effort ran out. */
export function listFills(
  strip: OpenStrip,
  range: FillRange,
  effort: Effort,
  found: (fill: Fill) => void,
): boolean {
  return new Lister(strip, range, effort, found).list()
}

/** Goes through the fillings of one strip, depth first. */
class Lister {
  private readonly strip: OpenStrip
  private readonly range: FillRange
  private readonly effort: Effort
  private readonly found: (fill: Fill) => void
  /** The shortest length from each kind on. */
  private readonly shortest: number[]
  private listed = 0
  private nodes = 0
  private complete = true

  constructor(strip: OpenStrip, range: FillRange, effort: Effort, found: (fill: Fill) => void) {
    this.strip = strip
    this.range = range
    this.effort = effort
    this.found = found
    this.shortest = [...strip.lengths, Infinity]
    for (let k = strip.lengths.length - 1; k >= 0; k--)
      this.shortest[k] = Math.min(this.shortest[k + 1]!, this.shortest[k]!)
  }

  list(): boolean {
    const {capacity, kinds} = this.strip
    this.visit(0, capacity, 0, this.range.mostParts)
    this.effort.spend(kinds.length + (this.nodes % 1000) / 2 + 10 * this.listed)
    return this.complete
  }

  private visit(from: number, room: number, gained: number, left: number): void {
    if (!this.complete) return
    const {lengths, worths, has, copies, ratios} = this.strip
    const {atLeast, below, more} = this.range
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

/** So many fillings are looked at before the best of them is taken. */
const mostNodes = 400

/**
 * Fill a strip with its first kind and what is worth most beside it, widest and longest first; the first filling worth
 * `enough` ends it.
 */
export function fillWell(strip: OpenStrip, enough: number, effort: Effort): Fill {
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
