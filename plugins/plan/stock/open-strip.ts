import type {Task} from './task.ts'

/** A filling of one strip: how many of each kind, and what they are worth. */
export interface Fill {
  kinds: number[]
  copies: number[]
  worth: number
}

/** The kinds from `pivot` on that are wanted and that strips of a lane may hold. */
export function usableKinds(task: Task, lane: number, pivot: number, counts: ArrayLike<number>): number[] {
  const {length, takes} = task.lanes[lane]!
  const kinds: number[] = []
  for (let at = pivot; at < counts.length; at++)
    if (counts[at]! > 0 && takes[at] && task.parts[at]!.length <= length) kinds.push(at)
  return kinds
}

/** A strip as wide as its pivot, open to be filled: what may go into it, kind by kind, and what of it is in. */
export class OpenStrip {
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
