import type {Effort} from './effort.ts'
import {type Front, knapsackFront} from './knapsack-front.ts'
import type {Strip, Task} from './task.ts'

/** What a lane can yield at given worths of the parts: its best strip of each width, and the front over widths. */
export interface LaneWorth {
  strips: Strip[]
  front: Front
  /** The most that a rest of this width (one kerf added) can be worth. */
  atWidth: (width: number) => number
}

/**
 * Find for one lane what any width of it can hold at most, by worths of the part kinds, strip by strip.
 * No strip holds more of a kind than `counts`; strips beside each other may repeat, so it is a bound from above.
 */
export function laneWorth(
  task: Task,
  lane: number,
  counts: ArrayLike<number>,
  worths: ArrayLike<number>,
  maxWidth: number,
  effort: Effort,
): LaneWorth {
  const {length, takes} = task.lanes[lane]!
  const usable: number[] = []
  task.parts.forEach((part, at) => {
    if (takes[at] && counts[at]! > 0 && part.width <= maxWidth) usable.push(at)
  })
  const widths = [...new Set(usable.map((at) => task.parts[at]!.width))]
  const strips: Strip[] = []
  const best: number[] = []
  for (const width of widths) {
    const narrow = usable.filter((at) => task.parts[at]!.width <= width)
    const front = knapsackFront(
      narrow.map((at) => ({size: task.parts[at]!.length, worth: worths[at]!, count: counts[at]!})),
      length,
      effort,
    )
    const last = front.worths.length - 1
    const holds = new Map([...front.contents(last)].map(([at, copies]) => [narrow[at]!, copies]))
    strips.push({width, holds})
    best.push(front.worths[last]!)
  }
  const front = knapsackFront(
    strips.map(({width}, at) => ({size: width, worth: best[at]!, count: Math.floor(maxWidth / width)})),
    maxWidth,
    effort,
  )
  return {strips, front, atWidth: (width) => front.worths[entryAt(front.sizes, width)]!}
}

/** The last entry that is no larger than `size`. */
export function entryAt(sizes: readonly number[], size: number): number {
  let low = 0
  let high = sizes.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (sizes[middle]! <= size) low = middle
    else high = middle - 1
  }
  return low
}
