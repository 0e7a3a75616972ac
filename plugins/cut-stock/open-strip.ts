import type {Context} from './context.ts'
import type {Fill} from './cutting.ts'
import {entryAt} from './knapsack.ts'
import type {Task} from './task.ts'

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
  private readonly lane: number
  private readonly width: number

  constructor(
    task: Task,
    {lane, pivot}: {lane: number; pivot: number},
    counts: Int32Array,
    worths: ArrayLike<number>,
  ) {
    this.lane = lane
    this.width = task.parts[pivot]!.width
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
    const fill: Fill = {lane: this.lane, width: this.width, kinds: [], copies: [], worth}
    for (let k = 0; k < copies.length; k++)
      if (copies[k]! > 0) {
        fill.kinds.push(this.kinds[k]!)
        fill.copies.push(copies[k]!)
      }
    return fill
  }
}

/** The kinds from `pivot` on that are wanted and that strips of a lane may hold. */
function usableKinds(task: Task, lane: number, pivot: number, counts: Int32Array): number[] {
  const {takes} = task.lanes[lane]!
  const kinds: number[] = []
  for (let at = pivot; at < counts.length; at++) if (counts[at]! > 0 && takes[at]) kinds.push(at)
  return kinds
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
  {task, effort}: Context,
  lane: number,
  counts: Int32Array,
  worths: ArrayLike<number>,
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
