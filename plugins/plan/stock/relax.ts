import {type LaneWorth, laneWorth} from './best-strips.ts'
import type {Effort} from './effort.ts'
import {type Column, Simplex} from './simplex.ts'
import type {Bin, Strip, Task} from './task.ts'

/** A way to cut a bin: strips beside each other. */
export interface Pattern {
  lane: number
  width: number
  strips: Strip[]
  uses: Map<number, number>
}

export interface Relaxed {
  /** What the fractional cutting needs: the share of each bin, or the volume; never above the truth. */
  bound: number
  /** Worth of a part by kind, of a volume left over, and the most that each bin is worth. */
  worths: Float64Array
  leftWorth: number
  binWorths: number[]
  lanes: LaneWorth[]
  /** What of the worth must be in the bins: nothing can be cut out of bins whose worth is below it. */
  needed: number
  taken: {bin: number; pattern: Pattern; amount: number}[]
}

interface Tagged extends Column {
  pattern?: Pattern
  bin?: number
}

/**
 * Solve the fractional cutting by columns: each part at least `counts` times, at most `mayLeave` of volume left out.
 * `volumes` given: the least volume of bins, each used at most `count` times. Otherwise: the least share of all bins.
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
  task.parts.forEach((_, at) => {
    if (counts[at]! > 0) kinds.push(at)
  })
  const rowOf = new Map(kinds.map((at, row) => [at, row]))
  const m = kinds.length
  const size = m + bins.length + 1
  const leftRow = size - 1
  const volumeScale = Math.max(...kinds.map((at) => task.parts[at]!.volume))
  const total = volumes ? bins.reduce((sum, bin, b) => sum + bin.count * volumes[b]!, 0) : 1
  const share: Tagged = {
    cost: volumes ? 10 : 1,
    rows: bins.map((_, b) => m + b),
    values: bins.map((bin) => -bin.count),
  }
  const columnOf = (pattern: Pattern, b: number): Tagged => ({
    cost: volumes ? volumes[b]! / total : 0,
    rows: [...[...pattern.uses.keys()].filter((at) => rowOf.has(at)).map((at) => rowOf.get(at)!), m + b],
    values: [...[...pattern.uses].filter(([at]) => rowOf.has(at)).map(([, copies]) => copies), 1],
    pattern,
    bin: b,
  })
  const spare = (row: number, sign: 1 | -1): Tagged => ({cost: 0, rows: [row], values: [sign]})

  const rhs = [
    ...kinds.map((at) => counts[at]!),
    ...bins.map((bin) => (volumes ? bin.count : 0)),
    mayLeave / volumeScale,
  ]
  const first = kinds.map((at) => singleKind(task, at, counts[at]!, bins, columnOf))
  const used = bins.map(() => 0)
  first.forEach((column, row) => {
    used[column.bin!]! += rhs[row]! / column.values[0]!
  })
  const short = bins.map((bin, b) => (used[b]! - rhs[m + b]!) / bin.count)
  const tightest = short.indexOf(Math.max(...short))
  const basis = [
    ...first,
    ...bins.map((_, b) => (b === tightest && short[b]! > 0 ? share : spare(m + b, 1))),
    spare(leftRow, 1),
  ]
  const simplex = new Simplex<Tagged>(rhs, basis)
  const singles: Tagged[] = [
    share,
    ...kinds.map((_, row) => spare(row, -1)),
    ...bins.map((_, b) => spare(m + b, 1)),
    spare(leftRow, 1),
    ...(mayLeave > 0
      ? kinds.map((at, row) => ({
          cost: 0,
          rows: [row, leftRow],
          values: [1, task.parts[at]!.volume / volumeScale],
        }))
      : []),
  ]
  const columns: Tagged[] = []
  const seen = new Set<Pattern>()
  const offer = (pattern: Pattern) => {
    if (seen.has(pattern)) return
    seen.add(pattern)
    bins.forEach((bin, b) => {
      if (bin.lane === pattern.lane && bin.width >= pattern.width) columns.push(columnOf(pattern, b))
    })
  }
  for (const pattern of pool) offer(pattern)

  let best: Omit<Relaxed, 'taken'> | undefined
  const widest = new Map<number, number>()
  for (const bin of bins) widest.set(bin.lane, Math.max(widest.get(bin.lane) ?? 0, bin.width))
  for (let rounds = 0; rounds < 5000; rounds++) {
    const duals = simplex.duals()
    effort.spend((size * size + columns.length * 4) / 4)
    const entering = mostWorth([...singles, ...columns], duals)
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
    const binWorths = bins.map((bin) => lanes[bin.lane]!.atWidth(bin.width))
    const leftWorth = Math.max(-duals[leftRow]! / volumeScale, 0)
    const needed = kinds.reduce((sum, at) => sum + worths[at]! * counts[at]!, 0) - leftWorth * mayLeave
    const held = bins.reduce((sum, bin, b) => sum + bin.count * binWorths[b]!, 0)
    const bound = volumes
      ? total *
        (needed +
          bins.reduce((sum, bin, b) => sum + bin.count * Math.min(0, volumes[b]! / total - binWorths[b]!), 0))
      : held > 0
        ? needed / held
        : 0
    if (!best || bound > best.bound) best = {bound, worths, leftWorth, binWorths, lanes, needed}
    let added = 0
    const before = pool.length
    bins.forEach((bin, b) => {
      const price = (volumes ? volumes[b]! / total : 0) - duals[m + b]!
      if (binWorths[b]! <= price + 1e-9 * Math.max(1, price)) return
      const pattern = patternAt(lanes[bin.lane]!, bin)
      let worth = 0
      for (const [at, copies] of pattern.uses) worth += copies * worths[at]!
      if (worth <= price + 1e-9 * Math.max(1, price)) return
      pool.push(pattern)
      added++
    })
    if (added === 0) break
    for (let at = before; at < pool.length; at++) offer(pool[at]!)
    if (!volumes && best.bound > 1 + 1e-7) break
  }
  const taken = simplex.basis.flatMap((column, row) =>
    column.pattern && simplex.takes[row]! > 1e-9
      ? [{bin: column.bin!, pattern: column.pattern, amount: simplex.takes[row]!}]
      : [],
  )
  return {...best!, taken}
}

/** The column whose price most exceeds its cost; none where no column's does. */
function mostWorth(columns: readonly Tagged[], duals: Float64Array): Tagged | undefined {
  let least = -1e-9
  let found: Tagged | undefined
  for (const column of columns) {
    let reduced = column.cost
    for (let e = 0; e < column.rows.length; e++) reduced -= duals[column.rows[e]!]! * column.values[e]!
    if (reduced < least) {
      least = reduced
      found = column
    }
  }
  return found
}

/** A first column for a kind: as many of it as its bin with most room holds. */
function singleKind(
  task: Task,
  at: number,
  count: number,
  bins: readonly Bin[],
  columnOf: (pattern: Pattern, b: number) => Tagged,
): Tagged {
  const part = task.parts[at]!
  let best: Tagged | undefined
  let most = 0
  bins.forEach((bin, b) => {
    const lane = task.lanes[bin.lane]!
    if (!lane.takes[at] || bin.width < part.width) return
    const along = Math.min(Math.floor(lane.length / part.length), count)
    const across = Math.floor(bin.width / part.width)
    if (along * across * bin.count <= most) return
    most = along * across * bin.count
    const strips = Array.from({length: across}, () => ({width: part.width, holds: new Map([[at, along]])}))
    const uses = new Map([[at, along * across]])
    best = columnOf({lane: bin.lane, width: across * part.width, strips, uses}, b)
  })
  return best!
}

/** The best pattern of a bin at the worths that its lane was valued at. */
function patternAt(lane: LaneWorth, bin: Bin): Pattern {
  const {front, strips} = lane
  let entry = 0
  while (entry + 1 < front.sizes.length && front.sizes[entry + 1]! <= bin.width) entry++
  const chosen: Strip[] = []
  const uses = new Map<number, number>()
  for (const [at, copies] of front.contents(entry)) {
    for (let copy = 0; copy < copies; copy++) chosen.push(strips[at]!)
    for (const [kind, count] of strips[at]!.holds) uses.set(kind, (uses.get(kind) ?? 0) + count * copies)
  }
  return {lane: bin.lane, width: front.sizes[entry]!, strips: chosen, uses}
}
