import type {Relaxed} from './relax.ts'
import type {Step} from './search.ts'
import {restOf} from './search-state.ts'
import type {Bin} from './task.ts'

/** With fewer parts than this every one is placed by search. */
const mostSearched = 80

/**
 * Cut the whole part of each pattern's share first, where there are many parts: what is left is small, and a cutting
 * of it completes them. (Rounding down after Gilmore & Gomory 1961.)
 */
export function wholePatterns(
  counts: Int32Array,
  bins: readonly Bin[],
  {taken}: Pick<Relaxed, 'taken'>,
): {steps: Step[]; counts: Int32Array; bins: Bin[]} {
  const rest = Int32Array.from(counts)
  const left = bins.map((bin) => ({...bin}))
  const steps: Step[] = []
  const total = counts.reduce((sum, n) => sum + n, 0)
  const shares = total < mostSearched ? [] : [...taken].sort((a, b) => b.amount - a.amount)
  for (const {bin, pattern, amount} of shares)
    for (let time = 0; time < Math.floor(amount + 1e-6); time++) {
      const from = left[bin]!
      if (from.count === 0 || [...pattern.uses].some(([at, copies]) => rest[at]! < copies)) break
      from.count--
      let {width} = from
      for (const strip of pattern.strips) {
        const [kinds, copies] = [[...strip.holds.keys()], [...strip.holds.values()]]
        steps.push({lane: pattern.lane, from: width, width: strip.width, kinds, copies})
        width -= strip.width
      }
      restOf(left, pattern.lane, width).count++
      for (const [at, copies] of pattern.uses) rest[at]! -= copies
    }
  return {steps, counts: rest, bins: left.filter(({count}) => count > 0)}
}
