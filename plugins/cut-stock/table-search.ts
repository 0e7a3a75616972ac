import {allowed, type Context, type Effort} from './context.ts'
import {Cutting, type Fill} from './cutting.ts'
import {listFills} from './fills.ts'
import {fewMore, OpenStrip} from './open-strip.ts'
import {spareWorth} from './prices.ts'
import {mostFailed, type Outcome, search} from './search.ts'
import {type Bin, type Job, type Prices, type Task, total, widestByLane} from './task.ts'

/**
 * Search for a cutting of all parts where little may be lost: by turns among strips of about as many parts as the
 * usual one, of a few more, and among all, each time with more effort. Strips of few parts are few, and seen through
 * soon; only the last of each turn can prove that there is none.
 */
export function tightSearch(context: Context, job: Job, prices: Prices): Outcome {
  const {task, effort} = context
  const usual = partsPerStrip(task, job)
  const isDone = new Set<number>()
  for (let allowance = effort.limit / 60; !effort.over; allowance *= 3) {
    for (const mostParts of [usual, usual + 1, usual + 2, Infinity]) {
      if (isDone.has(mostParts)) continue
      const own = allowed(context, allowance)
      const outcome = tableSearch(own, job, prices, mostParts)
      if (outcome?.found || (outcome?.ended && mostParts === Infinity)) return outcome
      if (outcome ? outcome.ended : !own.effort.over) isDone.add(mostParts)
    }
    const outcome = search(allowed(context, allowance), job, prices)
    if (outcome.found || outcome.ended) return outcome
  }
  return {ended: false}
}

/** How many parts a strip holds on the average, rounded up. */
function partsPerStrip({parts, lanes}: Task, {counts, bins}: Job): number {
  let lengths = 0
  counts.forEach((n, at) => {
    lengths += n * parts[at]!.length
  })
  let count = 0
  let room = 0
  for (const bin of bins) {
    count += bin.count
    room += bin.count * lanes[bin.lane]!.length
  }
  return Math.ceil((room * total(counts)) / (count * lengths) - 0.01)
}

/** A filling that may be used, and what it loses against the best strip of its width. */
interface Row {
  fill: Fill
  loss: number
}

/** A longer table is slower than listing fillings as they are needed. */
const mostRows = 60_000

/**
 * Look for a cutting of all parts as `search` does, from a table of every filling that does not lose more than all
 * strips together may: at each step the part that the fewest fillings hold is cut next. Undefined where that table
 * would be too long. It only looks among strips of so many parts at most: that it `ended` proves nothing then.
 */
function tableSearch(context: Context, job: Job, prices: Prices, mostParts: number): Outcome | undefined {
  const {spare, held} = spareWorth(job, prices)
  const slop = 1e-9 * held
  if (spare < -slop) return {ended: true}
  const table = tableOf(context, job, prices, {budget: spare + slop, mostParts})
  return table && new TableSearch(context, job, prices, {table, slop}).run(spare)
}

/** List every filling that loses at most `budget`; undefined where there are too many. */
function tableOf(
  context: Context,
  {counts, bins}: Job,
  {worths, atWidth}: Prices,
  {budget, mostParts}: {budget: number; mostParts: number},
): Row[] | undefined {
  const {task, effort} = context
  const rows: Row[] = []
  for (const [lane, most] of widestByLane(bins)) {
    const more = fewMore(context, lane, counts, worths)
    for (let pivot = 0; pivot < counts.length; pivot++) {
      const {width} = task.parts[pivot]!
      if (counts[pivot] === 0 || width > most || !task.lanes[lane]!.takes[pivot]) continue
      const best = atWidth(lane, width)
      const strip = new OpenStrip(task, {lane, pivot}, counts, worths)
      const bounds = {atLeast: best - budget, below: Infinity, most: mostRows - rows.length}
      const isAll = listFills(strip, {...bounds, anyFill: true, mostParts, more}, effort, (fill) =>
        rows.push({fill, loss: best - fill.worth}),
      )
      if (!isAll) return undefined
    }
  }
  return rows
}

class TableSearch {
  private readonly effort: Effort
  private readonly atWidth: Prices['atWidth']
  private readonly table: readonly Row[]
  private readonly slop: number
  private readonly cutting: Cutting
  private readonly failed = new Set<string>()

  constructor(
    {task, effort}: Context,
    job: Job,
    {atWidth}: Prices,
    {table, slop}: {table: readonly Row[]; slop: number},
  ) {
    this.effort = effort
    this.atWidth = atWidth
    this.table = table
    this.slop = slop
    this.cutting = new Cutting(task, job)
  }

  run(spare: number): Outcome {
    return this.visit(this.table, spare)
      ? {found: this.cutting.steps, ended: true}
      : {ended: !this.effort.over}
  }

  /** Go on from where the cutting stands, with the rows that may still be used; true where all parts are cut. */
  private visit(alive: readonly Row[], budget: number): boolean {
    const {cutting, effort} = this
    const pivot = this.scarcest(alive)
    if (pivot < 0) return true
    effort.spend(30 + alive.length)
    if (effort.over) return false
    const key = cutting.key()
    if (this.failed.has(key)) return false
    for (const {loss, bin, fill} of this.optionsOf(alive, pivot, budget)) {
      const rest = cutting.saw(bin, fill)
      if (this.visit(this.stillAlive(alive, budget - loss + this.slop), budget - loss)) return true
      cutting.unsaw(bin, rest)
      if (effort.over) return false
    }
    if (this.failed.size < mostFailed) this.failed.add(key)
    return false
  }

  /** The ways to cut a kind of part that lose no more than the budget, by rising loss. */
  private optionsOf(alive: readonly Row[], pivot: number, budget: number) {
    const {atWidth} = this
    const options: {loss: number; bin: Bin; fill: Fill}[] = []
    for (const {fill, loss: own} of alive) {
      if (!fill.kinds.includes(pivot)) continue
      const {lane, width} = fill
      for (const bin of this.cutting.bins) {
        if (bin.count === 0 || bin.lane !== lane || bin.width < width) continue
        const across = atWidth(lane, bin.width) - atWidth(lane, bin.width - width)
        const loss = own + across - atWidth(lane, width)
        if (loss <= budget + this.slop) options.push({loss, bin, fill})
      }
    }
    return options.sort((a, b) => a.loss - b.loss)
  }

  /** The kind of part that the fewest rows hold; -1 where all parts are cut. */
  private scarcest(alive: readonly Row[]): number {
    const {counts} = this.cutting
    const held = new Int32Array(counts.length)
    for (const {fill} of alive) for (const kind of fill.kinds) held[kind]!++
    let found = -1
    for (let at = 0; at < counts.length; at++)
      if (counts[at]! > 0 && (found < 0 || held[at]! < held[found]!)) found = at
    return found
  }

  private stillAlive(alive: readonly Row[], budget: number): Row[] {
    const {counts} = this.cutting
    return alive.filter(({fill: {kinds, copies}, loss}) => {
      if (loss > budget) return false
      for (let k = 0; k < kinds.length; k++) if (copies[k]! > counts[kinds[k]!]!) return false
      return true
    })
  }
}
