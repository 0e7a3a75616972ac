import type {Context, Effort} from './context.ts'
import {laneWorth, neededWorth} from './prices.ts'
import {allPieces, type Demand, type Prices, type Task, total, widestByLane} from './task.ts'

/** What any choice of pieces must hold: with so many of each kind, Σ count·worth is at least `needed`. */
export interface Cover {
  worths: number[]
  needed: number
}

/** Tell whether a choice of pieces meets all covers. */
export const meetsCovers = (covers: readonly Cover[], chosen: readonly number[]): boolean =>
  covers.every(({worths, needed}) => {
    const held = chosen.reduce((sum, n, p) => sum + n * worths[p]!, 0)
    return held >= needed - 1e-9 * Math.abs(needed)
  })

/** Which choices are wanted: none that `not` refuses, no part of one of `never`, none above the volume `under`. */
interface Wanted {
  not?: (chosen: readonly number[]) => boolean
  never?: readonly number[][]
  under: number
}

/**
 * Find the choice of pieces (how many of each kind) of least volume that satisfies all covers and is wanted. Among
 * equal volumes the fewest pieces, then the earlier kinds. Undefined where there is none; `cut short` where the effort
 * ran out.
 */
export function choosePieces(
  {task, effort}: Omit<Context, 'pool'>,
  covers: readonly Cover[],
  wanted: Wanted,
): number[] | 'cut short' | undefined {
  return new Chooser(task, covers, wanted, effort).choose()
}

/** Bound from below how many pieces a choice needs that meets the covers, where one is known that takes so many. */
export function fewestPieces(
  {task, effort}: Omit<Context, 'pool'>,
  covers: readonly Cover[],
  used: number,
): number {
  const alike = {...task, pieces: task.pieces.map((piece) => ({...piece, volume: 1}))}
  const found = choosePieces({task: alike, effort}, covers, {under: used})
  return Array.isArray(found) ? total(found) : Math.min(used, 1)
}

/** Goes through the choices, the largest pieces first. */
class Chooser {
  private readonly volumes: readonly number[]
  private readonly counts: readonly number[]
  private readonly covers: readonly Cover[]
  private readonly wanted: Wanted
  private readonly effort: Effort
  private readonly order: number[]
  private readonly slacks: number[] = []
  /** By cover: what the kinds from a rank on could still add, and the best worth a volume they offer. */
  private readonly reach: number[][] = []
  private readonly ratio: number[][] = []
  private readonly chosen: number[]
  private best: number[] | undefined
  private least: number
  private fewest = Infinity
  private isOver = false

  constructor(task: Task, covers: readonly Cover[], wanted: Wanted, effort: Effort) {
    const volumes = task.pieces.map(({volume}) => volume)
    this.volumes = volumes
    this.counts = allPieces(task)
    this.covers = covers
    this.wanted = wanted
    this.effort = effort
    this.order = volumes.map((_, p) => p).sort((a, b) => volumes[b]! - volumes[a]! || a - b)
    this.chosen = volumes.map(() => 0)
    this.least = wanted.under
    for (const {worths, needed} of covers) {
      this.slacks.push(1e-9 * Math.max(Math.abs(needed), 1e-30))
      const reach = [...volumes, 0]
      const ratio = [...volumes, 0]
      for (let rank = this.order.length - 1; rank >= 0; rank--) {
        const p = this.order[rank]!
        reach[rank] = reach[rank + 1]! + worths[p]! * this.counts[p]!
        ratio[rank] = Math.max(ratio[rank + 1]!, worths[p]! / volumes[p]!)
      }
      this.reach.push(reach)
      this.ratio.push(ratio)
    }
  }

  choose(): number[] | 'cut short' | undefined {
    const needs = this.covers.map(({needed}) => needed)
    this.visit(0, 0, 0, needs)
    return this.isOver ? 'cut short' : this.best
  }

  private visit(rank: number, volume: number, pieces: number, needs: readonly number[]): void {
    if (this.isOver) return
    const {covers, slacks, chosen, least} = this
    this.effort.spend(0.2 * (1 + covers.length))
    if (this.effort.over) this.isOver = true
    let atLeast = 0
    for (let c = 0; c < covers.length; c++) {
      if (needs[c]! <= slacks[c]!) continue
      if (needs[c]! > this.reach[c]![rank]! + slacks[c]!) return
      atLeast = Math.max(atLeast, (needs[c]! - slacks[c]!) / this.ratio[c]![rank]!)
    }
    const bound = (volume + atLeast) * (1 - 1e-12)
    if (bound > least || (bound >= least * (1 - 1e-9) && pieces >= this.fewest)) return
    if (atLeast === 0 && this.isWanted()) {
      if (volume < least * (1 - 1e-9) || (volume <= least * (1 + 1e-9) && pieces < this.fewest)) {
        this.best = [...chosen]
        this.least = volume
        this.fewest = pieces
      }
      return
    }
    if (rank === this.order.length) return
    const p = this.order[rank]!
    for (let count = this.counts[p]!; count >= 0; count--) {
      chosen[p] = count
      const left = needs.map((need, c) => need - count * covers[c]!.worths[p]!)
      this.visit(rank + 1, volume + count * this.volumes[p]!, pieces + count, left)
    }
    chosen[p] = 0
  }

  private isWanted(): boolean {
    const {chosen} = this
    const {not, never = []} = this.wanted
    if (not?.(chosen)) return false
    return !never.some((bad) => chosen.every((count, p) => count <= bad[p]!))
  }
}

/** Say what any choice of pieces must hold by plain reckoning: the area of all parts, and the number of each kind. */
export function firstCovers(task: Task, demand: Demand): Cover[] {
  const {atWidth} = task.byArea
  const area: Cover = {
    worths: task.pieces.map(({lane, width}) => atWidth(lane, width)),
    needed: neededWorth(demand, task.byArea),
  }
  if (demand.mayLeave > 0) return [area]
  const each = task.parts.map((part, at) => ({
    worths: task.pieces.map((piece) => {
      const lane = task.lanes[piece.lane]!
      return lane.takes[at] ? Math.floor(lane.length / part.length) * Math.floor(piece.width / part.width) : 0
    }),
    needed: demand.counts[at]!,
  }))
  // Where any one piece could hold all of a kind, its number tells nothing.
  return [area, ...each.filter(({worths, needed}) => worths.some((worth) => worth < needed))]
}

/** Turn prices of parts into a condition on any choice of pieces that may leave so much volume uncut. */
export function coverOf(context: Context, demand: Demand, prices: Prices): Cover {
  const {pieces} = context.task
  const widest = widestByLane(pieces.map(({lane, width}) => ({lane, width, count: 1})))
  const lanes = new Map(
    [...widest].map(([lane, width]) => [
      lane,
      laneWorth(context, {lane, width}, demand.counts, prices.worths),
    ]),
  )
  return {
    worths: pieces.map(({lane, width}) => lanes.get(lane)!.atWidth(width)),
    needed: neededWorth(demand, prices),
  }
}
