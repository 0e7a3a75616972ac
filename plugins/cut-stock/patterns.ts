import {restOf, type Step} from './cutting.ts'
import {contentsOf, entryAt} from './knapsack.ts'
import type {LaneWorth} from './prices.ts'
import {type Bin, type Job, type Pattern, type Strip, type Task, total} from './task.ts'

/** A pattern that some bin, by its place in the list, is cut by; the amount need not be whole. */
export interface Taken {
  bin: number
  pattern: Pattern
  amount: number
}

/** A first pattern for a kind: as many of it as a bin holds, in the kind of bin where most fit. */
export function singleKind(
  task: Task,
  at: number,
  count: number,
  bins: readonly Bin[],
): Omit<Taken, 'amount'> {
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
  const entry = entryAt(front.sizes, bin.width)
  const chosen: Strip[] = []
  const uses = new Map<number, number>()
  for (const [at, copies] of contentsOf(front, entry)) {
    for (let copy = 0; copy < copies; copy++) chosen.push(strips[at]!)
    for (const [kind, count] of strips[at]!.holds) uses.set(kind, (uses.get(kind) ?? 0) + count * copies)
  }
  return {lane: bin.lane, width: front.sizes[entry]!, strips: chosen, uses}
}

/** With fewer parts than this every one is placed by search. */
const mostSearched = 80

/**
 * Cut the whole part of each pattern's share first, where there are many parts: what is left is small, and a cutting
 * of it completes them. (Rounding down after Gilmore & Gomory 1961.)
 */
export function wholePatterns(job: Job, taken: readonly Taken[]): {steps: Step[]; rest: Job} {
  const counts = Int32Array.from(job.counts)
  const bins = job.bins.map((bin) => ({...bin}))
  const steps: Step[] = []
  const shares = total(counts) < mostSearched ? [] : [...taken].sort((a, b) => b.amount - a.amount)
  for (const {bin, pattern, amount} of shares)
    for (let time = 0; time < Math.floor(amount + 1e-6); time++) {
      const from = bins[bin]!
      if (from.count === 0 || [...pattern.uses].some(([at, copies]) => counts[at]! < copies)) break
      from.count--
      let {width} = from
      for (const strip of pattern.strips) {
        const [kinds, copies] = [[...strip.holds.keys()], [...strip.holds.values()]]
        steps.push({lane: pattern.lane, from: width, width: strip.width, kinds, copies})
        width -= strip.width
      }
      restOf(bins, pattern.lane, width).count++
      for (const [at, copies] of pattern.uses) counts[at]! -= copies
    }
  return {steps, rest: {...job, counts, bins: bins.filter(({count}) => count > 0)}}
}
