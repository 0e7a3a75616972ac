import type {Effort} from './effort.ts'
import {type Prices, search, type Verdict} from './search.ts'
import {tableSearch} from './table-search.ts'
import type {Bin, Task} from './task.ts'

/**
 * Search where little may be lost: by turns among strips of about as many parts as the usual one, of a few more, and
 * among all, each time with more effort. Short strips are few and seen through soon; the last of each turn can prove.
 */
export function tightSearch(
  task: Task,
  counts: Int32Array,
  bins: readonly Bin[],
  prices: Prices,
  mayLeave: number,
  effort: Effort,
): Verdict {
  const usual = partsPerStrip(task, counts, bins)
  const isUseless = new Set<number>()
  for (let allowance = effort.limit / 60; !effort.over; allowance *= 3) {
    for (const mostParts of [usual, usual + 1, usual + 2, Infinity]) {
      if (isUseless.has(mostParts)) continue
      const verdict = tableSearch(task, counts, bins, prices, mayLeave, effort.part(allowance), mostParts)
      if (typeof verdict === 'object' || verdict === 'none') return verdict
      if (verdict === undefined || verdict === 'ended') isUseless.add(mostParts)
    }
    const verdict = search(task, counts, bins, prices, mayLeave, effort.part(allowance))
    if (verdict !== 'unknown') return verdict
  }
  return 'unknown'
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
