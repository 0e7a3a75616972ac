import type {Context} from './context.ts'
import {patternAt, singleKind, type Taken} from './patterns.ts'
import {type LaneWorth, laneWorth, neededWorth} from './prices.ts'
import {type Column, mostWanted, Simplex} from './simplex.ts'
import {type Job, type Pattern, type Prices, type Task, widestByLane} from './task.ts'

export interface Relaxed {
  /** What the fractional cutting needs: the share of each bin, or the volume; never above the truth. */
  bound: number
  /** At these the bound holds. */
  prices: Prices
  taken: Taken[]
}

/** A guard against turning in circles; a bound found before it still holds. */
const mostRounds = 5000

/** So many steps go into one bound, even where a search has none left. */
const mostSteps = 2e6

/**
 * Solve the fractional cutting by columns: each part at least `counts` times, at most `mayLeave` of volume left out.
 * `volumes` given: the least volume of bins, each used at most `count` times. Otherwise: the least share of all bins.
 * New patterns go into the pool, and what the pool holds is tried first.
 * Gilmore & Gomory (1961, 1965); the bound holds for any prices (Farley 1990).
 */
export function relax(context: Context, job: Job, volumes?: readonly number[]): Relaxed {
  const {pool, effort} = context
  const program = new Program(context.task, job, volumes)
  for (const pattern of pool) program.offer(pattern)
  let best: Omit<Relaxed, 'taken'> | undefined
  const until = effort.spent + mostSteps
  for (let round = 0; round < mostRounds; round++) {
    const duals = program.simplex.duals()
    effort.spend(program.steps / 6)
    const entering = mostWanted(program.columns, duals)
    if (entering) {
      if (!program.simplex.enter(entering)) break
      continue
    }
    const {bound, prices, patterns} = program.price(context, duals)
    if (!best || bound > best.bound) best = {bound, prices}
    if (effort.over && effort.spent > until) break
    pool.push(...patterns)
    if (patterns.length === 0) break
    for (const pattern of patterns) program.offer(pattern)
    if (!volumes && best.bound > 1 + 1e-9) break
  }
  return {...best!, taken: program.taken()}
}

/** A column by which a pattern is cut from a bin, or one that only fills a row. */
interface Tagged extends Column {
  pattern?: Pattern
  bin?: number
}

/** The linear program of a job: a row for each kind of part, for each bin and for the volume left out. */
class Program {
  readonly simplex: Simplex<Tagged>
  readonly columns: Tagged[]
  private readonly job: Job
  private readonly isByVolume: boolean
  private readonly kinds: number[] = []
  private readonly rowOf: Int32Array
  private readonly leftRow: number
  private readonly volumeScale: number
  /** The volume of all bins, and what share of it each bin takes; nothing where no volume is asked for. */
  private readonly allVolume: number
  private readonly costs: readonly number[]

  constructor(task: Task, job: Job, volumes: readonly number[] | undefined) {
    const {counts, bins, mayLeave} = job
    this.job = job
    this.isByVolume = volumes !== undefined
    this.rowOf = new Int32Array(task.parts.length).fill(-1)
    task.parts.forEach((_, at) => {
      if (counts[at]! > 0) this.rowOf[at] = this.kinds.push(at) - 1
    })
    this.leftRow = this.kinds.length + bins.length
    this.volumeScale = Math.max(...this.kinds.map((at) => task.parts[at]!.volume))
    this.allVolume = volumes ? bins.reduce((sum, bin, b) => sum + bin.count * volumes[b]!, 0) : 1
    this.costs = bins.map((_, b) => (volumes ? volumes[b]! / this.allVolume : 0))
    const share: Tagged = {
      cost: volumes ? 10 : 1,
      rows: bins.map((_, b) => this.binRow(b)),
      values: bins.map((bin) => -bin.count),
    }
    this.simplex = this.start(task, share)
    this.columns = [
      share,
      ...this.kinds.map((_, row) => spare(row, -1)),
      ...bins.map((_, b) => spare(this.binRow(b), 1)),
      spare(this.leftRow, 1),
    ]
    if (mayLeave > 0)
      this.kinds.forEach((at, row) => {
        const values = [1, task.parts[at]!.volume / this.volumeScale]
        this.columns.push({cost: 0, rows: [row, this.leftRow], values})
      })
  }

  /** Start from patterns of one kind each; the bin that they overfill most takes a larger share of all. */
  private start(task: Task, share: Tagged): Simplex<Tagged> {
    const {counts, bins, mayLeave} = this.job
    const wanted = this.kinds.map((at) => counts[at]!)
    const has = bins.map((bin) => (this.isByVolume ? bin.count : 0))
    const first = this.kinds.map((at) => {
      const {pattern, bin} = singleKind(task, at, counts[at]!, bins)
      return this.columnOf(pattern, bin)
    })
    const short = bins.map((bin, b) => {
      let used = 0
      first.forEach((column, row) => {
        if (column.bin === b) used += wanted[row]! / column.values[1]!
      })
      return (used - has[b]!) / bin.count
    })
    const tightest = short.indexOf(Math.max(...short))
    return new Simplex<Tagged>(
      [...wanted, ...has, mayLeave / this.volumeScale],
      [
        ...first,
        ...bins.map((_, b) => (b === tightest && short[b]! > 0 ? share : spare(this.binRow(b), 1))),
        spare(this.leftRow, 1),
      ],
    )
  }

  private binRow(b: number): number {
    return this.kinds.length + b
  }

  private columnOf(pattern: Pattern, b: number): Tagged {
    const rows = [this.binRow(b)]
    const values = [1]
    for (const [at, copies] of pattern.uses)
      if (this.rowOf[at]! >= 0) {
        rows.push(this.rowOf[at]!)
        values.push(copies)
      }
    return {cost: this.costs[b]!, rows, values, pattern, bin: b}
  }

  /** The steps of one round. */
  get steps(): number {
    return (this.leftRow + 1) ** 2 + this.columns.length * 4
  }

  /** Make a pattern a column of every bin that it fits. */
  offer(pattern: Pattern): void {
    this.job.bins.forEach((bin, b) => {
      if (bin.lane === pattern.lane && bin.width >= pattern.width)
        this.columns.push(this.columnOf(pattern, b))
    })
  }

  /** Bound the cutting at the prices of the rows, and find the patterns worth more than what their bins cost. */
  price(context: Context, duals: Float64Array): Omit<Relaxed, 'taken'> & {patterns: Pattern[]} {
    const {job, kinds, costs} = this
    const {counts, bins} = job
    const worths = new Float64Array(counts.length)
    kinds.forEach((at, row) => {
      worths[at] = Math.max(duals[row]!, 0)
    })
    const lanes: LaneWorth[] = []
    for (const [lane, width] of widestByLane(bins))
      lanes[lane] = laneWorth(context, {lane, width}, counts, worths)
    const prices: Prices = {
      worths,
      leftWorth: Math.max(-duals[this.leftRow]! / this.volumeScale, 0),
      atWidth: (lane, width) => lanes[lane]?.atWidth(width) ?? 0,
    }
    const needed = neededWorth(job, prices)
    const binWorths = bins.map((bin) => prices.atWidth(bin.lane, bin.width))
    const held = bins.reduce((sum, bin, b) => sum + bin.count * binWorths[b]!, 0)
    const dear = bins.reduce((sum, bin, b) => sum + bin.count * Math.min(0, costs[b]! - binWorths[b]!), 0)
    const patterns = bins.flatMap((bin, b) => {
      const cost = costs[b]! - duals[this.binRow(b)]!
      const enough = cost + 1e-9 * Math.max(1, cost)
      if (binWorths[b]! <= enough) return []
      const pattern = patternAt(lanes[bin.lane]!, bin)
      let worth = 0
      for (const [at, copies] of pattern.uses) worth += copies * worths[at]!
      return worth > enough ? [pattern] : []
    })
    const bound = this.isByVolume ? this.allVolume * (needed + dear) : held > 0 ? needed / held : 0
    return {bound, prices, patterns}
  }

  /** The patterns by which the bins are cut as the program stands. */
  taken(): Taken[] {
    return this.simplex.basis.flatMap(({pattern, bin}, row) => {
      const amount = this.simplex.takes[row]!
      return pattern && amount > 1e-9 ? [{bin: bin!, pattern, amount}] : []
    })
  }
}

/** A column that takes up what is short of, or beyond, one row. */
const spare = (row: number, sign: 1 | -1): Tagged => ({cost: 0, rows: [row], values: [sign]})
