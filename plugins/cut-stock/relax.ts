import {coverOf} from './choose-pieces.ts'
import type {Effort} from './effort.ts'
import {type LaneWorth, laneWorth, type Pattern, patternAt, singleKind} from './patterns.ts'
import {type Column, Simplex} from './simplex.ts'
import {type Bin, type Task, withoutRoom} from './task.ts'

export interface Relaxed {
  /** What the fractional cutting needs: the share of each bin, or the volume; never above the truth. */
  bound: number
  /** Worth of a part by kind, of a volume left over, and the most that each lane is worth. */
  worths: Float64Array
  leftWorth: number
  lanes: LaneWorth[]
  taken: {bin: number; pattern: Pattern; amount: number}[]
}

interface Tagged extends Column {
  pattern?: Pattern
  bin?: number
}

/**
 * Solve the fractional cutting by columns: each part at least `counts` times, at most `mayLeave` of volume left out.
 * `volumes` given: the least volume of bins, each used at most `count` times. Otherwise: the least share of all bins.
 * New patterns go into the pool, and what the pool holds is tried first.
 * Gilmore & Gomory (1961, 1965); the bound holds for any prices (Farley 1990).
 */
export function relax(
  task: Task,
  counts: ArrayLike<number>,
  bins: readonly Bin[],
  mayLeave: number,
  pool: Pattern[],
  effort: Effort,
  volumes?: readonly number[],
): Relaxed {
  const kinds: number[] = []
  const rowOf = new Int32Array(task.parts.length).fill(-1)
  task.parts.forEach((_, at) => {
    if (counts[at]! > 0) rowOf[at] = kinds.push(at) - 1
  })
  const m = kinds.length
  const leftRow = m + bins.length
  const volumeScale = Math.max(...kinds.map((at) => task.parts[at]!.volume))
  const total = volumes ? bins.reduce((sum, bin, b) => sum + bin.count * volumes[b]!, 0) : 1
  const costs = bins.map((_, b) => (volumes ? volumes[b]! / total : 0))
  const columnOf = (pattern: Pattern, b: number): Tagged => {
    const rows = [m + b]
    const values = [1]
    for (const [at, copies] of pattern.uses)
      if (rowOf[at]! >= 0) {
        rows.push(rowOf[at]!)
        values.push(copies)
      }
    return {cost: costs[b]!, rows, values, pattern, bin: b}
  }
  const spare = (row: number, sign: 1 | -1): Tagged => ({cost: 0, rows: [row], values: [sign]})
  const share: Tagged = {
    cost: volumes ? 10 : 1,
    rows: bins.map((_, b) => m + b),
    values: bins.map((bin) => -bin.count),
  }
  const rhs = [
    ...kinds.map((at) => counts[at]!),
    ...bins.map((bin) => (volumes ? bin.count : 0)),
    mayLeave / volumeScale,
  ]
  const first = kinds.map((at) => {
    const {pattern, bin} = singleKind(task, at, counts[at]!, bins)
    return columnOf(pattern, bin)
  })
  const short = bins.map((bin, b) => {
    const used = first.reduce(
      (sum, column, row) => sum + (column.bin === b ? rhs[row]! / column.values[1]! : 0),
      0,
    )
    return (used - rhs[m + b]!) / bin.count
  })
  const tightest = short.indexOf(Math.max(...short))
  const simplex = new Simplex<Tagged>(rhs, [
    ...first,
    ...bins.map((_, b) => (b === tightest && short[b]! > 0 ? share : spare(m + b, 1))),
    spare(leftRow, 1),
  ])
  const columns: Tagged[] = [
    share,
    ...kinds.map((_, row) => spare(row, -1)),
    ...bins.map((_, b) => spare(m + b, 1)),
    spare(leftRow, 1),
  ]
  if (mayLeave > 0)
    kinds.forEach((at, row) => {
      columns.push({cost: 0, rows: [row, leftRow], values: [1, task.parts[at]!.volume / volumeScale]})
    })
  const offer = (pattern: Pattern) => {
    bins.forEach((bin, b) => {
      if (bin.lane === pattern.lane && bin.width >= pattern.width) columns.push(columnOf(pattern, b))
    })
  }
  for (const pattern of pool) offer(pattern)

  let best: Omit<Relaxed, 'taken'> | undefined
  const widest = new Map<number, number>()
  for (const bin of bins) widest.set(bin.lane, Math.max(widest.get(bin.lane) ?? 0, bin.width))
  for (let rounds = 0; rounds < mostRounds; rounds++) {
    const duals = simplex.duals()
    effort.spend(((leftRow + 1) ** 2 + columns.length * 4) / 6)
    const entering = mostWorth(columns, duals)
    if (entering) {
      if (!simplex.enter(entering)) break
      continue
    }
    const worths = new Float64Array(task.parts.length)
    kinds.forEach((at, row) => {
      worths[at] = Math.max(duals[row]!, 0)
    })
    const lanes: LaneWorth[] = []
    for (const [lane, width] of widest) lanes[lane] = laneWorth(task, lane, counts, worths, width, effort)
    const leftWorth = Math.max(-duals[leftRow]! / volumeScale, 0)
    const needed = kinds.reduce((sum, at) => sum + worths[at]! * counts[at]!, 0) - leftWorth * mayLeave
    const binWorths = bins.map((bin) => lanes[bin.lane]!.atWidth(bin.width))
    const held = bins.reduce((sum, bin, b) => sum + bin.count * binWorths[b]!, 0)
    const dear = bins.reduce((sum, bin, b) => sum + bin.count * Math.min(0, costs[b]! - binWorths[b]!), 0)
    const bound = volumes ? total * (needed + dear) : held > 0 ? needed / held : 0
    if (!best || bound > best.bound) best = {bound, worths, leftWorth, lanes}
    const before = pool.length
    bins.forEach((bin, b) => {
      const price = costs[b]! - duals[m + b]!
      const enough = price + 1e-9 * Math.max(1, price)
      if (binWorths[b]! <= enough) return
      const pattern = patternAt(lanes[bin.lane]!, bin)
      let worth = 0
      for (const [at, copies] of pattern.uses) worth += copies * worths[at]!
      if (worth > enough) pool.push(pattern)
    })
    if (pool.length === before) break
    for (let at = before; at < pool.length; at++) offer(pool[at]!)
    if (!volumes && best.bound > 1 + 1e-9) break
  }
  const taken = simplex.basis.flatMap((column, row) =>
    column.pattern && simplex.takes[row]! > 1e-9
      ? [{bin: column.bin!, pattern: column.pattern, amount: simplex.takes[row]!}]
      : [],
  )
  return {...best!, taken}
}

/** A guard against turning in circles; a bound found before it still holds. */
const mostRounds = 5000

/** The column whose price most exceeds its cost; none where no column's does. */
function mostWorth(columns: readonly Tagged[], duals: Float64Array): Tagged | undefined {
  let least = -1e-9
  let found: Tagged | undefined
  for (const column of columns) {
    const {rows, values} = column
    let reduced = column.cost
    for (let e = 0; e < rows.length; e++) reduced -= duals[rows[e]!]! * values[e]!
    if (reduced < least) {
      least = reduced
      found = column
    }
  }
  return found
}

/** A bound so near does not rise any more. */
const mostSteps = 12

/**
 * Bound from below the volume (mm³) that any cutting of all pieces leaves uncut. Each relaxed cutting that may leave
 * too little tells by its prices how much more it would have to leave (Newton's method on the relaxed share).
 */
export function leastLeft(
  task: Task,
  counts: Int32Array,
  bins: readonly Bin[],
  pool: Pattern[],
  effort: Effort,
): number {
  const misfit = withoutRoom(task, counts, bins)
  const fitting = counts.map((count, at) => (misfit.kinds.has(at) ? 0 : count))
  let left = task.step / 2
  for (let step = 0; step < mostSteps && !effort.over; step++) {
    const relaxed = relax(task, fitting, bins, left, pool, effort)
    if (relaxed.bound <= 1 + 1e-9 || relaxed.leftWorth <= 0) break
    const {worths, needed} = coverOf(task, fitting, relaxed, left, effort)
    const held = task.pieces.reduce((sum, {pieces}, p) => sum + pieces.length * worths[p]!, 0)
    const next = left + (needed - held) / relaxed.leftWorth
    if (next <= left * (1 + 1e-12)) break
    left = next
  }
  return misfit.volume + left
}
