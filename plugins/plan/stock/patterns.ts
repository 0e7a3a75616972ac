import type {LaneWorth} from './best-strips.ts'
import {contentsOf} from './knapsack-front.ts'
import type {Bin, Strip, Task} from './task.ts'

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
