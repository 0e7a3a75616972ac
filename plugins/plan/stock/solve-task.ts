import {type Cover, choosePieces} from './choose-pieces.ts'
import {coverOf} from './cover-of.ts'
import {Effort} from './effort.ts'
import {type Packing, packInto, packQuickly} from './pack-into.ts'
import {areaFronts} from './quick-cut.ts'
import {type Pattern, relax} from './relax.ts'
import type {Step} from './search.ts'
import type {Bin, Task} from './task.ts'

export interface Solved {
  steps: Step[]
  /** How many pieces of each kind are cut. */
  chosen: number[]
  left: Int32Array
  proven: boolean
  /** The least volume of pieces, and the fewest pieces, that any plan which places as much can do with. */
  boundVolume: number
  boundPieces: number
}

const binsOf = (task: Task, chosen: readonly number[]): Bin[] =>
  task.pieces.flatMap(({lane, width}, p) => (chosen[p]! > 0 ? [{lane, width, count: chosen[p]!}] : []))

/** Place the most volume, then cut into the least volume of pieces. */
export function solveTask(task: Task, effort: Effort): Solved {
  const counts = Int32Array.from(task.parts, (part) => part.ids.length)
  const volumes = task.pieces.map((piece) => piece.volume)
  const all = task.pieces.map((piece) => piece.pieces.length)
  const pool: Pattern[] = []
  const most = placeMost(task, counts, all, pool, effort)
  const mayLeave = most.packing.leftVolume * (1 + 1e-12)
  let best = {packing: most.packing as {steps: Step[]; left: Int32Array; leftVolume: number}, chosen: all}
  best = dropPieces(task, counts, best, mayLeave, effort)
  let volume = volumeOf(best.chosen, volumes)

  const covers: Cover[] = areaCovers(task, counts, mayLeave, effort)
  const never: number[][] = []
  let allowance = effort.limit / 100
  let proven = false
  let strong = false
  let bound = 0
  search: while (!effort.over) {
    const unknown = new Set<string>()
    let open = false
    for (;;) {
      const chosen = choosePieces(volumes, all, covers, {not: unknown, never, under: volume}, effort)
      if (chosen === 'cut short') break search
      if (chosen === undefined) break
      const bins = binsOf(task, chosen)
      const level = volumeOf(chosen, volumes)
      if (!open) bound = Math.max(bound, level)
      if (open && level >= volume * (1 - 1e-9)) break
      const quick = packQuickly(task, counts, bins, mayLeave, effort)
      let result: Packing | undefined
      if (quick.leftVolume <= mayLeave) result = {verdict: 'found', ...quick}
      else if (!open && level >= volume * (1 - 1e-9)) {
        proven = true
        break search
      }
      if (!result && !strong) {
        strong = true
        const relaxed = relax(
          task,
          counts,
          binsOf(task, all),
          mayLeave,
          pool,
          effort,
          volumesOfBins(task, all),
        )
        covers.push(coverOf(task, counts, relaxed, mayLeave, effort))
        continue
      }
      result ??= packInto(task, counts, bins, mayLeave, pool, effort.part(allowance))
      if (result.verdict === 'found') {
        best = {packing: result, chosen}
        volume = level
        if (!open) {
          proven = true
          break search
        }
        break
      }
      if (result.verdict === 'none') {
        never.push(chosen)
        if (result.cover) covers.push(result.cover)
      } else {
        unknown.add(chosen.join())
        open = true
      }
    }
    if (!open) {
      proven = true
      break
    }
    allowance *= 4
  }
  return {
    steps: best.packing.steps,
    chosen: best.chosen,
    left: best.packing.left,
    proven: proven && most.proven,
    boundVolume: proven ? volume : bound,
    boundPieces: proven ? best.chosen.reduce((sum, n) => sum + n, 0) : fewest(task, all, covers),
  }
}

const volumesOfBins = (task: Task, chosen: readonly number[]): number[] =>
  task.pieces.flatMap(({volume}, p) => (chosen[p]! > 0 ? [volume] : []))

const volumeOf = (chosen: readonly number[], volumes: readonly number[]): number =>
  chosen.reduce((sum, count, p) => sum + count * volumes[p]!, 0)

function fewest(task: Task, all: readonly number[], covers: readonly Cover[]): number {
  const found = choosePieces(
    task.pieces.map(() => 1),
    all,
    covers,
    {not: new Set(), never: [], under: Infinity},
    new Effort(20_000),
  )
  return Array.isArray(found) ? found.reduce((sum, n) => sum + n, 0) : 1
}

/** Find a cutting of all pieces that places the greatest volume. */
function placeMost(task: Task, counts: Int32Array, all: readonly number[], pool: Pattern[], effort: Effort) {
  const bins = binsOf(task, all)
  let best: Packing = {verdict: 'unknown', ...packQuickly(task, counts, bins, 0, effort)}
  for (let goal = 0; best.leftVolume > goal; ) {
    const next = packInto(task, counts, bins, goal, pool, effort.part(effort.limit / 3))
    if (next.verdict === 'found') best = next
    else if (goal > 0 || next.verdict === 'unknown') return {packing: best, proven: next.verdict === 'none'}
    goal = best.leftVolume * (1 - 1e-9)
  }
  return {packing: best, proven: true}
}

/** Do without pieces, the largest first, as long as the rest still holds the parts. */
function dropPieces(
  task: Task,
  counts: Int32Array,
  start: {packing: {steps: Step[]; left: Int32Array; leftVolume: number}; chosen: number[]},
  mayLeave: number,
  effort: Effort,
) {
  let best = start
  const order = task.pieces
    .map((_, p) => p)
    .sort((a, b) => task.pieces[b]!.volume - task.pieces[a]!.volume || b - a)
  for (const p of order) {
    for (let step = best.chosen[p]!; step >= 1; ) {
      const chosen = [...best.chosen]
      chosen[p]! -= step
      const packing =
        chosen[p]! >= 0 ? packQuickly(task, counts, binsOf(task, chosen), mayLeave, effort) : undefined
      if (packing && packing.leftVolume <= mayLeave) best = {packing, chosen}
      else step = step >> 1
    }
  }
  return best
}

function areaCovers(task: Task, counts: Int32Array, mayLeave: number, effort: Effort): Cover[] {
  const all = task.pieces.map((piece) => ({lane: piece.lane, width: piece.width, count: piece.pieces.length}))
  const fronts = areaFronts(task, counts, all, effort)
  let needed = 0
  let densest = 0
  task.parts.forEach((part, at) => {
    needed += counts[at]! * part.length * part.width
    densest = Math.max(densest, (part.length * part.width) / part.volume)
  })
  const area: Cover = {
    worths: task.pieces.map((piece) => fronts[piece.lane]!(piece.width)),
    needed: needed - densest * mayLeave,
  }
  if (mayLeave > 0) return [area]
  const single = task.parts.map((part, at) => ({
    worths: task.pieces.map((piece) => {
      const lane = task.lanes[piece.lane]!
      return lane.takes[at] ? Math.floor(lane.length / part.length) * Math.floor(piece.width / part.width) : 0
    }),
    needed: counts[at]!,
  }))
  const binding = single.filter(({worths, needed: n}) => worths.some((worth) => worth < n))
  return [area, ...binding]
}
