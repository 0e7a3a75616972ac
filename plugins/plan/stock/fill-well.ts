import type {Effort} from './effort.ts'
import {type Fill, OpenStrip} from './open-strip.ts'
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
