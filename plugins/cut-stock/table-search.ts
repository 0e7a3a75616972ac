import type {Effort} from './effort.ts'
import {fewMore, listFills} from './fills.ts'
import {spareWorth} from './prices.ts'
import {type Outcome, type Step, search} from './search.ts'
import {restOf, stateKey} from './search-state.ts'
import type {Bin, Prices, Task} from './task.ts'

/** A filling that may be used, and what it loses against the best strip of its width. */
interface Row {
  lane: number
  width: number
  kinds: number[]
  copies: number[]
  loss: number
}

/** A longer table is slower than listing fillings as they are needed. */
const mostRows = 60_000

/**
 * Look for a cutting of all parts as `search` does, from a table of every filling that does not lose more than all
 * strips together may: at each step the part that the fewest fillings hold is cut next. Undefined where that table
 * would be too long. With `mostParts` a strip it only looks among such strips: that it `ended` proves nothing then.
 */
function tableSearch(
  task: Task,
  startCounts: Int32Array,
  startBins: readonly Bin[],
  prices: Prices,
  effort: Effort,
  mostParts = Infinity,
): Outcome | undefined {
  const {atWidth} = prices
  const counts = Int32Array.from(startCounts)
  const bins: Bin[] = startBins.map((bin) => ({...bin}))
  const {spare, held} = spareWorth(prices, counts, bins, 0)
  const slop = 1e-9 * held
  if (spare < -slop) return {ended: true}
  const table = tableOf(task, counts, bins, prices, {budget: spare + slop, mostParts}, effort)
  if (!table) return undefined
  const steps: Step[] = []
  const failed = new Set<string>()

  const visit = (alive: readonly number[], budget: number): boolean => {
    const pivot = scarcest(table, alive, counts)
    if (pivot < 0) return true
    effort.spend(30 + alive.length)
    if (effort.over) return false
    const key = stateKey(task, counts, bins)
    if (failed.has(key)) return false
    const options: {loss: number; bin: Bin; row: Row}[] = []
    for (const at of alive) {
      const row = table[at]!
      if (!row.kinds.includes(pivot)) continue
      for (const bin of bins) {
        if (bin.count === 0 || bin.lane !== row.lane || bin.width < row.width) continue
        const across = atWidth(bin.lane, bin.width) - atWidth(bin.lane, bin.width - row.width)
        const loss = row.loss + across - atWidth(bin.lane, row.width)
        if (loss <= budget + slop) options.push({loss, bin, row})
      }
    }
    options.sort((a, b) => a.loss - b.loss)
    for (const {loss, bin, row} of options) {
      const rest = restOf(bins, bin.lane, bin.width - row.width)
      bin.count--
      rest.count++
      row.kinds.forEach((at, k) => {
        counts[at]! -= row.copies[k]!
      })
      steps.push({lane: bin.lane, from: bin.width, width: row.width, kinds: row.kinds, copies: row.copies})
      if (visit(stillAlive(table, alive, counts, budget - loss + slop), budget - loss)) return true
      steps.pop()
      row.kinds.forEach((at, k) => {
        counts[at]! += row.copies[k]!
      })
      rest.count--
      bin.count++
      if (effort.over) return false
    }
    if (failed.size < 200_000) failed.add(key)
    return false
  }
  const isFound = visit(
    table.map((_, at) => at),
    spare,
  )
  return isFound ? {found: steps, ended: true} : {ended: !effort.over}
}

/** List every filling that loses at most `budget`; undefined where there are too many. */
function tableOf(
  task: Task,
  counts: Int32Array,
  bins: readonly Bin[],
  {worths, atWidth}: Prices,
  {budget, mostParts}: {budget: number; mostParts: number},
  effort: Effort,
): Row[] | undefined {
  const rows: Row[] = []
  const widest = new Map<number, number>()
  for (const {lane, width, count} of bins)
    if (count > 0) widest.set(lane, Math.max(widest.get(lane) ?? 0, width))
  for (const [lane, most] of widest) {
    const more = fewMore(task, lane, counts, worths, effort)
    for (let pivot = 0; pivot < counts.length; pivot++) {
      const {width} = task.parts[pivot]!
      if (counts[pivot] === 0 || width > most) continue
      const best = atWidth(lane, width)
      const range = {
        atLeast: best - budget,
        below: Infinity,
        most: mostRows - rows.length,
        anyFill: true,
        mostParts,
      }
      const all = listFills(
        task,
        lane,
        pivot,
        counts,
        worths,
        more,
        range,
        effort,
        ({kinds, copies, worth}) => rows.push({lane, width, kinds, copies, loss: best - worth}),
      )
      if (!all) return undefined
    }
  }
  return rows
}

/** The kind of part that the fewest rows hold; -1 where all parts are cut. */
function scarcest(table: readonly Row[], alive: readonly number[], counts: Int32Array): number {
  const held = new Int32Array(counts.length)
  for (const at of alive) for (const kind of table[at]!.kinds) held[kind]!++
  let found = -1
  for (let at = 0; at < counts.length; at++)
    if (counts[at]! > 0 && (found < 0 || held[at]! < held[found]!)) found = at
  return found
}

const stillAlive = (
  table: readonly Row[],
  alive: readonly number[],
  counts: Int32Array,
  budget: number,
): number[] =>
  alive.filter((at) => {
    const {kinds, copies, loss} = table[at]!
    if (loss > budget) return false
    for (let k = 0; k < kinds.length; k++) if (copies[k]! > counts[kinds[k]!]!) return false
    return true
  })

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
