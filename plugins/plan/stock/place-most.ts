import {binsOf} from './bins-of.ts'
import {allPieces} from './choice.ts'
import type {Effort} from './effort.ts'
import {leastLeft} from './least-left.ts'
import {lessLeft} from './less-left.ts'
import {type Packing, packInto} from './pack-into.ts'
import {packMostQuickly} from './pack-quickly.ts'
import type {Pattern} from './patterns.ts'
import type {Task} from './task.ts'

/** Goals between the bound and what is found, near the bound first: there little may be lost, and a search is short. */
const goals = [0.02, 0.1, 0.35]

export interface Most {
  packing: Packing
  proven: boolean
  /** At least so much volume (mm³) is left uncut by any plan. */
  bound: number
}

/** Find a cutting of all pieces that places the greatest volume of parts. */
export function placeMost(task: Task, counts: Int32Array, pool: Pattern[], effort: Effort): Most {
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
