import {type Cover, choosePieces, coverOf, fewestPieces, firstCovers} from './choose-pieces.ts'
import {allowed, type Context, Effort} from './context.ts'
import {fitting, type Packing, type Step} from './cutting.ts'
import {usedPieces} from './lay-out.ts'
import {leastPieces} from './least-pieces.ts'
import {packInto} from './pack.ts'
import {packMostQuickly, quickCut} from './quick-cut.ts'
import {relax} from './relax.ts'
import {allPieces, binsOf, choiceVolume, type Demand, type Job, lessLeft, type Task, total} from './task.ts'

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

/** The relaxed cutting of more kinds of parts than this would take too long. */
const mostKinds = 250

/** Place the greatest volume of parts, then cut the least volume of pieces for it. */
export function solve(task: Task, effort: Effort): Solved {
  const context: Context = {task, pool: [], effort}
  const counts = Int32Array.from(task.parts, ({ids}) => ids.length)
  if (task.parts.length > mostKinds) return solveRoughly(context, counts)
  const most = placeMost(context, counts)
  const {leftVolume} = most.packing
  const demand: Demand = {counts, mayLeave: leftVolume * (1 + 1e-12)}
  const {packing, chosen, proven, bound, covers} = leastPieces(context, demand, most.packing)
  const used = total(chosen)
  return {
    steps: packing.steps,
    chosen,
    left: packing.left,
    proven: proven && most.proven,
    mayPlaceMore: Math.max(leftVolume - most.bound, 0),
    boundVolume: bound,
    // A proven plan takes the fewest that any as good can do with.
    boundPieces: proven ? used : fewestPieces({task, effort: new Effort(20_000)}, covers, used),
    covers,
  }
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
function placeMost(context: Context, counts: Int32Array): Most {
  const {task, effort} = context
  const job: Job = {counts, bins: binsOf(task, allPieces(task)), mayLeave: 0}
  let best: Packing = packMostQuickly(context, job)
  const settled = (): Most => ({packing: best, proven: true, bound: best.leftVolume})
  if (best.leftVolume === 0) return settled()
  const whole = packInto(allowed(context, effort.limit / 3), job)
  if (whole.packing) best = whole.packing
  if (whole.packing) return settled()

  const better = (mayLeave: number, share: number) => {
    const next = packInto(allowed(context, effort.limit * share), {...job, mayLeave}, true)
    if (next.packing) best = next.packing
    return next
  }
  if (better(lessLeft(task, best.leftVolume), 0.02).ended) return settled()
  const lowest = leastLeft(context, job)
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

/** A bound so near does not rise any more. */
const mostSteps = 12

/**
 * Bound from below the volume (mm³) that any cutting of all pieces leaves uncut. Each relaxed cutting that may leave
 * too little tells by its prices how much more it would have to leave (Newton's method on the relaxed share).
 */
function leastLeft(context: Context, job: Job): number {
  const {task, effort} = context
  const fits = fitting(task, job)
  const {counts} = fits
  let mayLeave = task.step / 2
  for (let step = 0; step < mostSteps && !effort.over; step++) {
    const {bound, prices} = relax(context, {...job, counts, mayLeave})
    if (bound <= 1 + 1e-9 || prices.leftWorth <= 0) break
    const {worths, needed} = coverOf(context, {counts, mayLeave}, prices)
    const held = task.pieces.reduce((sum, {pieces}, p) => sum + pieces.length * worths[p]!, 0)
    const next = mayLeave + (needed - held) / prices.leftWorth
    if (next <= mayLeave * (1 + 1e-12)) break
    mayLeave = next
  }
  return fits.misfitVolume + mayLeave
}

/** What goes into each part of a rough cutting. */
const roughSteps = 1e6

/** Cut thousands of different parts quickly, and bound by their area how far from the best that may be. */
function solveRoughly(whole: Context, counts: Int32Array): Solved {
  const {task} = whole
  const context = allowed(whole, roughSteps)
  const job = {counts, bins: binsOf(task, allPieces(task)), mayLeave: Infinity}
  const {steps, left, leftVolume} = quickCut(context, job, task.byArea, 0)!
  const chosen = usedPieces(task, steps)
  const cutVolume = choiceVolume(task, chosen)
  const covers = firstCovers(task, {counts, mayLeave: leftVolume}).slice(0, 1)
  const least = choosePieces(allowed(whole, roughSteps), covers, {under: cutVolume})
  const boundVolume = Array.isArray(least) ? choiceVolume(task, least) : 0
  return {
    steps,
    chosen,
    left,
    proven: leftVolume === 0 && boundVolume >= cutVolume * (1 - 1e-9),
    mayPlaceMore: leftVolume,
    boundVolume,
    boundPieces: fewestPieces(allowed(whole, roughSteps), covers, total(chosen)),
    covers,
  }
}
