import type {Effort} from './effort.ts'
import {type Fill, usableKinds} from './fills.ts'
import type {Task} from './task.ts'

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
  const kinds = usableKinds(task, lane, pivot, counts)
  const filler = new Filler(task, kinds, counts, worths, enough)
  filler.visit(0, task.lanes[lane]!.length, 0)
  effort.spend(filler.nodes + kinds.length)
  return filler.fill()
}

/** Looks through the fillings of one strip, depth first. */
class Filler {
  nodes = 0
  private most = -1
  private best: number[] = []
  private readonly kinds: readonly number[]
  private readonly lengths: number[] = []
  private readonly worths: number[] = []
  private readonly has: number[] = []
  /** The best worth a length from each kind on. */
  private readonly ratios: number[] = []
  private readonly copies: number[] = []
  private readonly enough: number

  constructor(
    task: Task,
    kinds: readonly number[],
    counts: Int32Array,
    worths: ArrayLike<number>,
    enough: number,
  ) {
    this.kinds = kinds
    this.enough = enough
    for (const at of kinds) {
      this.lengths.push(task.parts[at]!.length)
      this.worths.push(worths[at]!)
      this.has.push(counts[at]!)
      this.copies.push(0)
      this.ratios.push(0)
    }
    let ratio = 0
    for (let k = kinds.length - 1; k >= 0; k--) {
      ratio = Math.max(ratio, this.worths[k]! / this.lengths[k]!)
      this.ratios[k] = ratio
    }
  }

  /** Tell whether it was enough. */
  visit(from: number, room: number, worth: number): boolean {
    const {lengths, copies} = this
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
    if (k === n || worth + room * this.ratios[k]! <= this.most) return false
    const length = lengths[k]!
    const fits = Math.min(this.has[k]!, Math.floor(room / length))
    for (let c = fits; c >= (k === 0 ? 1 : 0); c--) {
      copies[k] = c
      if (this.visit(k + 1, room - c * length, worth + c * this.worths[k]!)) return true
    }
    copies[k] = 0
    return false
  }

  fill(): Fill {
    const fill: Fill = {kinds: [], copies: [], worth: this.most}
    for (let k = 0; k < this.kinds.length; k++)
      if (this.best[k]! > 0) {
        fill.kinds.push(this.kinds[k]!)
        fill.copies.push(this.best[k]!)
      }
    return fill
  }
}
