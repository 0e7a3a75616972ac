import type {Effort} from './effort.ts'
import {contentsOf, emptyFront, entryAt, type Front, knapsackFront, withPackable} from './knapsack-front.ts'
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
  const strips: Strip[] = []
  const best: number[] = []
  let along = emptyFront
  let pushed = emptyFront
  // From the narrowest kind up: a strip holds what is as wide as it or narrower.
  for (let at = task.parts.length - 1; at >= 0; at--) {
    const {width, length: size} = task.parts[at]!
    const isUsable = takes[at] && counts[at]! > 0 && width <= maxWidth
    if (isUsable)
      along = withPackable(along, at, {size, worth: worths[at]!, count: counts[at]!}, length, effort)
    const last = along.worths.length - 1
    if (along === pushed || task.parts[at - 1]?.width === width) continue
    pushed = along
    strips.push({width, holds: contentsOf(along, last)})
    best.push(along.worths[last]!)
  }
  const across = strips.map(({width}, at) => ({
    size: width,
    worth: best[at]!,
    count: Math.floor(maxWidth / width),
  }))
  const front = knapsackFront(across, maxWidth, effort)
  return {strips, front, atWidth: (width) => front.worths[entryAt(front.sizes, width)]!}
}
