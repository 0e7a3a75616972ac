import type {Effort} from './effort.ts'
import type {FewMore} from './few-more.ts'
import {type Fill, OpenStrip} from './open-strip.ts'
import type {Task} from './task.ts'

/** Which fillings to list: by worth, how many at most, also those that more would fit into, of how many parts at most. */
export interface FillRange {
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
