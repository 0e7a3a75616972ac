import type {Effort} from './effort.ts'
import {contentsOf, emptyFront, entryAt, type Front, knapsackFront, withPackable} from './knapsack.ts'
import type {Bin, Strip, Task} from './task.ts'

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

/** A way to cut a bin: strips beside each other, so wide in all. */
export interface Pattern {
  lane: number
  width: number
  strips: Strip[]
  /** How many of each kind it holds. */
  uses: Map<number, number>
}

/** A first pattern for a kind: as many of it as a bin holds, in the kind of bin where most fit. */
export function singleKind(
  task: Task,
  at: number,
  count: number,
  bins: readonly Bin[],
): {pattern: Pattern; bin: number} {
  const {length, width} = task.parts[at]!
  const fits = bins.map((bin) => {
    const lane = task.lanes[bin.lane]!
    if (!lane.takes[at]) return {along: 0, across: 0, most: 0}
    const along = Math.min(Math.floor(lane.length / length), count)
    const across = Math.floor(bin.width / width)
    return {along, across, most: along * across * bin.count}
  })
  const bin = fits.reduce((best, {most}, b) => (most > fits[best]!.most ? b : best), 0)
  const {along, across} = fits[bin]!
  const strips = Array.from({length: across}, () => ({width, holds: new Map([[at, along]])}))
  const uses = new Map([[at, along * across]])
  return {pattern: {lane: bins[bin]!.lane, width: across * width, strips, uses}, bin}
}

/** The best pattern of a bin at the worths that its lane was valued at. */
export function patternAt({front, strips}: LaneWorth, bin: Bin): Pattern {
  let entry = 0
  while (entry + 1 < front.sizes.length && front.sizes[entry + 1]! <= bin.width) entry++
  const chosen: Strip[] = []
  const uses = new Map<number, number>()
  for (const [at, copies] of contentsOf(front, entry)) {
    for (let copy = 0; copy < copies; copy++) chosen.push(strips[at]!)
    for (const [kind, count] of strips[at]!.holds) uses.set(kind, (uses.get(kind) ?? 0) + count * copies)
  }
  return {lane: bin.lane, width: front.sizes[entry]!, strips: chosen, uses}
}
