import type {Effort} from './effort.ts'
import {entryAt} from './knapsack-front.ts'
import type {Task} from './task.ts'

/** A filling of one strip: how many of each kind, and what they are worth. */
export interface Fill {
  kinds: number[]
  copies: number[]
  worth: number
}

/** The most that one more part, or two, could be worth in some room, whatever kinds are left. */
export interface FewMore {
  one: (room: number) => number
  two: (room: number) => number
}

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
  {atLeast, below, most, anyFill, mostParts = Infinity}: FillRange,
  effort: Effort,
  found: (fill: Fill) => void,
): boolean {
  const {length: capacity, takes} = task.lanes[lane]!
  const kinds: number[] = []
  for (let at = pivot; at < counts.length; at++)
    if (counts[at]! > 0 && takes[at] && task.parts[at]!.length <= capacity) kinds.push(at)
  const n = kinds.length
  if (n === 0 || kinds[0] !== pivot) return true
  const lengths = kinds.map((at) => task.parts[at]!.length)
  const worth = kinds.map((at) => worths[at]!)
  const has = kinds.map((at) => counts[at]!)
  const bestRatio = new Float64Array(n + 1)
  const shortest = new Float64Array(n + 1).fill(Infinity)
  for (let k = n - 1; k >= 0; k--) {
    bestRatio[k] = Math.max(bestRatio[k + 1]!, worth[k]! / lengths[k]!)
    shortest[k] = Math.min(shortest[k + 1]!, lengths[k]!)
  }
  const copies = new Int32Array(n)
  let listed = 0
  let complete = true
  let nodes = 0
  const visit = (from: number, room: number, gained: number, left: number): void => {
    if (!complete) return
    let k = from
    while (k > 0 && k < n && lengths[k]! > room) k++
    if (++nodes % 1000 === 0) {
      effort.spend(500)
      if (effort.over) complete = false
    }
    const least = shortest[k]!
    const most2 =
      left === 1 || room < 2 * least
        ? more.one(room)
        : left === 2 || room < 3 * least
          ? more.two(room)
          : Infinity
    if (gained + Math.min(room * bestRatio[k]!, most2) < atLeast) return
    if (k === n || left === 0 || room < least) {
      if (gained >= below || gained < atLeast) return
      if (!anyFill) for (let j = 0; j < n; j++) if (copies[j]! < has[j]! && lengths[j]! <= room) return
      if (listed++ >= most) {
        complete = false
        return
      }
      const fill: Fill = {kinds: [], copies: [], worth: gained}
      for (let j = 0; j < n; j++)
        if (copies[j]! > 0) {
          fill.kinds.push(kinds[j]!)
          fill.copies.push(copies[j]!)
        }
      found(fill)
      return
    }
    const fits = Math.min(has[k]!, Math.floor(room / lengths[k]!), left)
    for (let c = fits; c >= (k === 0 ? 1 : 0); c--) {
      copies[k] = c
      visit(k + 1, room - c * lengths[k]!, gained + c * worth[k]!, left - c)
    }
    copies[k] = 0
  }
  visit(0, capacity, 0, mostParts)
  effort.spend(n + (nodes % 1000) / 2 + 10 * listed)
  return complete
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
  const ones = task.parts.flatMap((part, at) =>
    counts[at]! > 0 && task.lanes[lane]!.takes[at] ? [{size: part.length, worth: worths[at]!}] : [],
  )
  const pairs =
    ones.length > mostForPairs
      ? undefined
      : ones.flatMap((a, i) => ones.slice(i).map((b) => ({size: a.size + b.size, worth: a.worth + b.worth})))
  effort.spend((pairs ?? ones).length)
  return {
    one: stairs(ones),
    two: pairs ? stairs([...ones, ...pairs]) : () => Infinity,
  }
}

function stairs(items: {size: number; worth: number}[]): (room: number) => number {
  items.sort((a, b) => a.size - b.size)
  const sizes = items.map(({size}) => size)
  let most = 0
  const best = items.map(({worth}) => {
    most = Math.max(most, worth)
    return most
  })
  return (room) => (sizes.length === 0 || room < sizes[0]! ? 0 : best[entryAt(sizes, room)]!)
}
