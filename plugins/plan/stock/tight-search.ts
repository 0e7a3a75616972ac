import type {Effort} from './effort.ts'
import {type Outcome, search} from './search.ts'
import {tableSearch} from './table-search.ts'
import type {Bin, Prices, Task} from './task.ts'

/**
 * Search for a cutting of all parts where little may be lost: by turns among strips of about as many parts as the
 * usual one, of a few more, and among all, each time with more effort. Strips of few parts are few, and seen through
 * soon; only the last of each turn can prove that there is none.
 */
export function tightSearch(
  task: Task,
  counts: Int32Array,
  bins: readonly Bin[],
  prices: Prices,
  effort: Effort,
): Outcome {
  const usual = partsPerStrip(task, counts, bins)
  const isDone = new Set<number>()
  for (let allowance = effort.limit / 60; !effort.over; allowance *= 3) {
    for (const mostParts of [usual, usual + 1, usual + 2, Infinity]) {
      if (isDone.has(mostParts)) continue
      const own = effort.part(allowance)
      const outcome = tableSearch(task, counts, bins, prices, own, mostParts)
      if (outcome?.found || (outcome?.ended && mostParts === Infinity)) return outcome
      if (outcome ? outcome.ended : !own.over) isDone.add(mostParts)
    }
    const outcome = search(task, counts, bins, prices, 0, effort.part(allowance))
    if (outcome.found || outcome.ended) return outcome
  }
  return {ended: false}
}

/** How many parts a strip holds on the average, rounded up. */
function partsPerStrip(task: Task, counts: Int32Array, bins: readonly Bin[]): number {
  let parts = 0
  let lengths = 0
  counts.forEach((n, at) => {
    parts += n
    lengths += n * task.parts[at]!.length
  })
  let count = 0
  let room = 0
  for (const bin of bins) {
    count += bin.count
    room += bin.count * task.lanes[bin.lane]!.length
  }
  return Math.ceil((room * parts) / (count * lengths) - 0.01)
}
