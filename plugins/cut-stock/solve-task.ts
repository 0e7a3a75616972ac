import {type Cover, choosePieces, fewestPieces, firstCovers} from './choose-pieces.ts'
import {usedPieces} from './draft.ts'
import {Effort} from './effort.ts'
import {dropPieces, leastPieces} from './least-pieces.ts'
import {type Packing, packInto} from './pack-into.ts'
import type {Pattern} from './patterns.ts'
import {packMostQuickly, packQuickly, quickCut} from './quick-cut.ts'
import {leastLeft} from './relax.ts'
import type {Step} from './search.ts'
import {allPieces, binsOf, choiceVolume, lessLeft, type Task} from './task.ts'

/** How a task is cut, and how near to the best that is. */
export interface Solved {
  steps: Step[]
  /** How many pieces of each kind are cut. */
  chosen: number[]
  left: Int32Array
  proven: boolean
  /** So much more volume of parts (mm³) could be placed at most. */
  mayPlaceMore: number
  /** The least volume of pieces, and the fewest pieces, that any plan which places as much can do with. */
  boundVolume: number
  boundPieces: number
  /** What any choice of pieces must hold. */
  covers: Cover[]
}

/** Goals between the bound and what is found, near the bound first: there little may be lost, and a search is short. */
const goals = [0.02, 0.1, 0.35]

interface Most {
  packing: Packing
  proven: boolean
  /** At least so much volume (mm³) is left uncut by any plan. */
  bound: number
}

/** Find a cutting of all pieces that places the greatest volume of parts. */
function placeMost(task: Task, counts: Int32Array, pool: Pattern[], effort: Effort): Most {
  const bins = binsOf(task, allPieces(task))
  let best: Packing = packMostQuickly(task, counts, bins, effort)
  const settled = (): Most => ({packing: best, proven: true, bound: best.leftVolume})
  if (best.leftVolume === 0) return settled()
  const whole = packInto(task, counts, bins, 0, pool, effort.part(effort.limit / 3))
  if (whole.packing) best = whole.packing
  if (whole.packing) return settled()

  const better = (mayLeave: number, share: number) => {
    const next = packInto(task, counts, bins, mayLeave, pool, effort.part(effort.limit * share), {
      isForBest: true,
    })
    if (next.packing) best = next.packing
    return next
  }
  if (better(lessLeft(task, best.leftVolume), 0.02).ended) return settled()
  const lowest = leastLeft(task, counts, bins, pool, effort)
  let bound = lowest
  for (const goal of goals) {
    const less = lessLeft(task, best.leftVolume)
    if (less < bound) return settled()
    const mayLeave = Math.min(lowest + goal * (best.leftVolume - lowest), less)
    const {packing, ended} = better(mayLeave, 0.1)
    // The best within the goal is the best of all; where there is none, nothing leaves so little.
    if (ended && packing) return settled()
    if (ended) bound = mayLeave
  }
  const less = lessLeft(task, best.leftVolume)
  return less < bound || better(less, 0.3).ended ? settled() : {packing: best, proven: false, bound}
}

/** Cut thousands of different parts quickly, and bound by their area how far from the best that may be. */
function solveRoughly(task: Task, counts: Int32Array, effort: Effort): Solved {
  const all = allPieces(task)
  const {steps, left, leftVolume} = quickCut(
    task,
    counts,
    binsOf(task, all),
    task.byArea,
    0,
    Infinity,
    effort,
  )!
  const chosen = usedPieces(task, steps)
  const used = chosen.reduce((sum, n) => sum + n, 0)
  const cutVolume = choiceVolume(task, chosen)
  const covers = firstCovers(task, counts, leftVolume).slice(0, 1)
  const volumes = task.pieces.map(({volume}) => volume)
  const least = choosePieces(volumes, all, covers, {under: cutVolume}, effort)
  const boundVolume = Array.isArray(least) ? choiceVolume(task, least) : 0
  return {
    steps,
    chosen,
    left,
    proven: leftVolume === 0 && boundVolume >= cutVolume * (1 - 1e-9),
    mayPlaceMore: leftVolume,
    boundVolume,
    boundPieces: fewestPieces(task, covers, used, effort),
    covers,
  }
}

/** The relaxed cutting of more kinds of parts than this would take too long. */
const mostKinds = 250

/** Place the greatest volume of parts, then cut the least volume of pieces for it. */
export function solveTask(task: Task, effort: Effort): Solved {
  const counts = Int32Array.from(task.parts, ({ids}) => ids.length)
  if (task.parts.length > mostKinds) return solveRoughly(task, counts, effort)
  const pool: Pattern[] = []
  const most = placeMost(task, counts, pool, effort)
  const mayLeave = most.packing.leftVolume * (1 + 1e-12)
  const covers = firstCovers(task, counts, mayLeave)
  const all = {packing: most.packing, chosen: usedPieces(task, most.packing.steps)}
  const start = dropPieces(task, all, covers, (bins) => packQuickly(task, counts, bins, mayLeave, effort))
  const least = leastPieces(task, counts, start, covers, mayLeave, pool, effort)
  const used = least.chosen.reduce((sum, n) => sum + n, 0)
  return {
    steps: least.packing.steps,
    chosen: least.chosen,
    left: least.packing.left,
    proven: least.proven && most.proven,
    mayPlaceMore: Math.max(most.packing.leftVolume - most.bound, 0),
    boundVolume: least.bound,
    // A proven plan takes the fewest that any as good can do with.
    boundPieces: least.proven ? used : fewestPieces(task, covers, used, new Effort(20_000)),
    covers,
  }
}
