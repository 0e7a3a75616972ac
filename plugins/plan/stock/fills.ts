import {entryAt} from './best-strips.ts'
import type {Effort} from './effort.ts'
import type {Task} from './task.ts'

/** A filling of one strip: how many of each kind, and what they are worth. */
export interface Fill {
  kinds: number[]
  copies: number[]
  worth: number
  used: number
}

/**
 * List the fillings of a strip as wide as `pivot` that hold it, worth more than `above` and at most `upTo`,
 * into which nothing more would fit. False where the list ended at `most` or the effort ran out.
 */
export function listFills(
  task: Task,
  lane: number,
  pivot: number,
  counts: Int32Array,
  worths: ArrayLike<number>,
  range: {atLeast: number; below: number},
  most: number,
  effort: Effort,
  found: (fill: Fill) => void,
): boolean {
  const {length: capacity, takes} = task.lanes[lane]!
  const kinds: number[] = []
  for (let at = pivot; at < counts.length; at++)
    if (counts[at]! > 0 && takes[at] && task.parts[at]!.length <= capacity) kinds.push(at)
  const n = kinds.length
  const lengths = kinds.map((at) => task.parts[at]!.length)
  const worth = kinds.map((at) => worths[at]!)
  const has = kinds.map((at) => counts[at]!)
  const bestRatio = new Float64Array(n + 1)
  const shortest = new Float64Array(n + 1).fill(Infinity)
  for (let k = n - 1; k >= 0; k--) {
    bestRatio[k] = Math.max(bestRatio[k + 1]!, worth[k]! / lengths[k]!)
    shortest[k] = Math.min(shortest[k + 1]!, lengths[k]!)
  }
  const {atMostOne, atMostTwo} = fewMore(lengths, worth)
  const copies = new Int32Array(n)
  let listed = 0
  let complete = true
  const visit = (from: number, room: number, gained: number): void => {
    if (!complete) return
    let k = from
    while (k > 0 && k < n && lengths[k]! > room) k++
    effort.spend(1)
    if (gained + room * bestRatio[k]! < range.atLeast) return
    if (room < 2 * shortest[k]!) {
      if (gained + atMostOne(room) < range.atLeast) return
    } else if (room < 3 * shortest[k]! && gained + atMostTwo(room) < range.atLeast) return
    if (k === n || room < shortest[k]!) {
      if (gained >= range.below || gained < range.atLeast) return
      for (let j = 0; j < n; j++) if (copies[j]! < has[j]! && lengths[j]! <= room) return
      if (listed++ >= most || effort.over) {
        complete = false
        return
      }
      const fill: Fill = {kinds: [], copies: [], worth: gained, used: capacity - room}
      for (let j = 0; j < n; j++)
        if (copies[j]! > 0) {
          fill.kinds.push(kinds[j]!)
          fill.copies.push(copies[j]!)
        }
      found(fill)
      return
    }
    const fits = Math.min(has[k]!, Math.floor(room / lengths[k]!))
    for (let c = fits; c >= (k === 0 ? 1 : 0); c--) {
      copies[k] = c
      visit(k + 1, room - c * lengths[k]!, gained + c * worth[k]!)
    }
    copies[k] = 0
  }
  if (n > 0 && kinds[0] === pivot) visit(0, capacity, 0)
  return complete
}

/** The most that one more part, or two, could be worth in some room, whatever kinds are left. */
function fewMore(lengths: readonly number[], worths: readonly number[]) {
  const ones = lengths.map((length, k) => ({size: length, worth: worths[k]!}))
  const twos =
    ones.length > 150
      ? []
      : ones.flatMap((a, i) => ones.slice(i).map((b) => ({size: a.size + b.size, worth: a.worth + b.worth})))
  const stairs = (items: {size: number; worth: number}[]) => {
    items.sort((a, b) => a.size - b.size)
    const sizes = items.map(({size}) => size)
    let most = 0
    const best = items.map(({worth}) => (most = Math.max(most, worth)))
    return (room: number) => (sizes.length === 0 || room < sizes[0]! ? 0 : best[entryAt(sizes, room)]!)
  }
  const atMostOne = stairs(ones)
  const pairs = stairs([...ones, ...twos])
  return {atMostOne, atMostTwo: ones.length > 150 ? () => Infinity : pairs}
}
