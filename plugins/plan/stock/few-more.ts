import type {Effort} from './effort.ts'
import {entryAt} from './knapsack-front.ts'
import {usableKinds} from './open-strip.ts'
import type {Task} from './task.ts'

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
