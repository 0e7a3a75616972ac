import {type Context, Effort} from './context.ts'
import {
  contentsOf,
  emptyFront,
  entryAt,
  type Front,
  knapsackFront,
  type Packable,
  withPackable,
} from './knapsack.ts'
import type {Bin, Demand, Job, Prices, Strip, Task} from './task.ts'

/** What a lane can yield at given worths of the parts: its best strip of each width, and the front over widths. */
export interface LaneWorth {
  strips: Strip[]
  front: Front
  /** The most that a rest of this width (one kerf added) can be worth. */
  atWidth: (width: number) => number
}

/**
 * Find for one lane what any width of it, up to that given, can hold at most, by worths of the part kinds, strip by
 * strip. No strip holds more of a kind than `counts`; strips beside each other may repeat, so it is a bound from above.
 */
export function laneWorth(
  {task, effort}: Context,
  {lane, width: maxWidth}: Omit<Bin, 'count'>,
  counts: Int32Array,
  worths: ArrayLike<number>,
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
      along = withPackable(
        along,
        at,
        {size, worth: worths[at]!, count: counts[at]!},
        {capacity: length, effort},
      )
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
  const front = knapsackFront(across, {capacity: maxWidth, effort})
  return {strips, front, atWidth: (width) => front.worths[entryAt(front.sizes, width)]!}
}

/** So many steps go into how well widths can be filled; past them every width counts as filled. */
const mostAreaSteps = 2e6

/** Price parts by their area. */
export function areaPrices({parts, lanes, pieces}: Omit<Task, 'byArea'>): Prices {
  const effort = new Effort(mostAreaSteps)
  const fronts = lanes.map(({length, takes}, lane) => {
    if (effort.over) return undefined
    let room = 0
    for (const piece of pieces) if (piece.lane === lane) room = Math.max(room, piece.width)
    const strips: Packable[] = []
    let last = 0
    parts.forEach(({width}, at) => {
      if (!takes[at] || width > room || width === last) return
      strips.push({size: width, worth: width * length, count: Math.floor(room / width)})
      last = width
    })
    return knapsackFront(strips, {capacity: room, effort})
  })
  const worths = parts.map((part) => part.length * part.width)
  return {
    worths,
    leftWorth: Math.max(...parts.map((part, at) => worths[at]! / part.volume)),
    atWidth: (lane, width) => {
      const front = fronts[lane]
      return front ? front.worths[entryAt(front.sizes, width)]! : width * lanes[lane]!.length
    },
  }
}

/** Mix prices, both reckoned so that the bins are worth one, with so much of the second. */
export function mixedPrices(first: Prices, second: Prices, share: number, bins: readonly Bin[]): Prices {
  const a = (1 - share) / worthOf(bins, first)
  const b = share / worthOf(bins, second)
  return {
    worths: Array.from(first.worths, (worth, at) => a * worth + b * second.worths[at]!),
    atWidth: (lane, width) => a * first.atWidth(lane, width) + b * second.atWidth(lane, width),
    leftWorth: a * first.leftWorth + b * second.leftWorth,
  }
}

/** The most that bins can hold. */
function worthOf(bins: readonly Bin[], {atWidth}: Prices): number {
  let held = 0
  for (const {lane, width, count} of bins) if (count > 0) held += count * atWidth(lane, width)
  return held
}

/** What must be in the bins. */
export function neededWorth({counts, mayLeave}: Demand, {worths, leftWorth}: Prices): number {
  let needed = -leftWorth * mayLeave
  for (let at = 0; at < counts.length; at++) needed += counts[at]! * worths[at]!
  return needed
}

/** What the bins hold at most, what must be in them, and what is to spare: less than nothing where that is too much. */
export function spareWorth(job: Job, prices: Prices): {spare: number; held: number; needed: number} {
  const held = worthOf(job.bins, prices)
  const needed = neededWorth(job, prices)
  return {spare: held - needed, held, needed}
}
