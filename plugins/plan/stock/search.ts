import type {Effort} from './effort.ts'
import {type Fill, listFills} from './fills.ts'
import type {Relaxed} from './relax.ts'
import type {Bin, Task} from './task.ts'

/** A strip sawn off a bin that was `from` wide. */
export interface Step {
  lane: number
  from: number
  width: number
  kinds: number[]
  copies: number[]
}

export type Verdict = {found: Step[]} | 'none' | 'unknown'

/**
 * Look for a way to cut all parts but `mayLeave` of volume out of the bins, widest part first.
 * The relaxed worths tell how much may still be lost; a branch that loses more is not entered, so an ended search is
 * a proof that there is none.
 */
export function search(
  task: Task,
  startCounts: ArrayLike<number>,
  startBins: readonly Bin[],
  relaxed: Relaxed,
  mayLeave: number,
  effort: Effort,
): Verdict {
  const counts = Int32Array.from(startCounts)
  const bins: Bin[] = startBins.map((bin) => ({...bin}))
  const {worths, lanes, leftWorth} = relaxed
  const held = bins.reduce((sum, bin) => sum + bin.count * lanes[bin.lane]!.atWidth(bin.width), 0)
  const slop = 1e-9 * Math.max(held, 1e-30)
  const steps: Step[] = []
  const failed = new Set<string>()
  let complete = true

  const visit = (budget: number, leave: number): boolean => {
    let pivot = 0
    while (pivot < counts.length && counts[pivot] === 0) pivot++
    if (pivot === counts.length) return true
    if (effort.over) {
      complete = false
      return false
    }
    const key = stateKey(counts, bins, mayLeave > 0 ? leave : 0)
    if (failed.has(key)) return false
    const wasComplete = complete
    complete = true
    const part = task.parts[pivot]!
    let open = 0
    for (const bin of bins) open += bin.count
    let done = -Infinity
    for (const share of [2 / open, 8 / open, 1]) {
      const upTo = Math.min(budget * share, budget) + slop
      if (upTo <= done) continue
      const options: {loss: number; bin?: Bin; fill?: Fill}[] = []
      if (mayLeave > 0 && counts[pivot]! * part.volume <= leave * (1 + 1e-12)) {
        const loss = counts[pivot]! * (leftWorth * part.volume - worths[pivot]!)
        if (loss > done && loss <= upTo) options.push({loss})
      }
      for (const bin of bins) {
        if (bin.count === 0 || bin.width < part.width || !task.lanes[bin.lane]!.takes[pivot]) continue
        const lane = lanes[bin.lane]!
        const base = lane.atWidth(bin.width) - lane.atWidth(bin.width - part.width)
        const range = {atLeast: base - upTo, below: base - done}
        const all = listFills(task, bin.lane, pivot, counts, worths, range, 3000, effort, (fill) =>
          options.push({loss: base - fill.worth, bin, fill}),
        )
        if (!all) complete = false
      }
      done = upTo
      options.sort((a, b) => a.loss - b.loss)
      for (const {loss, bin, fill} of options) {
        if (!bin || !fill) {
          const all = counts[pivot]!
          counts[pivot] = 0
          if (visit(budget - loss, leave - all * part.volume)) return true
          counts[pivot] = all
        } else {
          const rest = restOf(bins, bin.lane, bin.width - part.width)
          bin.count--
          rest.count++
          fill.kinds.forEach((at, k) => {
            counts[at]! -= fill.copies[k]!
          })
          steps.push({
            lane: bin.lane,
            from: bin.width,
            width: part.width,
            kinds: fill.kinds,
            copies: fill.copies,
          })
          if (visit(budget - loss, leave)) return true
          steps.pop()
          fill.kinds.forEach((at, k) => {
            counts[at]! += fill.copies[k]!
          })
          rest.count--
          bin.count++
        }
        if (effort.over) break
      }
      if (effort.over) {
        complete = false
        break
      }
    }
    if (complete && failed.size < 300_000) failed.add(key)
    complete &&= wasComplete
    return false
  }
  const budget = held - relaxed.needed
  if (budget < -slop) return 'none'
  if (visit(budget, mayLeave)) return {found: steps}
  return complete ? 'none' : 'unknown'
}

function restOf(bins: Bin[], lane: number, width: number): Bin {
  const known = bins.find((bin) => bin.lane === lane && bin.width === width)
  if (known) return known
  const rest = {lane, width, count: 0}
  bins.push(rest)
  return rest
}

const stateKey = (counts: Int32Array, bins: readonly Bin[], leave: number): string =>
  `${counts.join()}|${bins
    .filter((bin) => bin.count > 0)
    .map((bin) => `${bin.lane}:${bin.width}x${bin.count}`)
    .sort()
    .join()}|${leave}`
