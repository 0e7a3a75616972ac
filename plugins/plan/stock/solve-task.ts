import {dropPieces} from './drop-pieces.ts'
import {Effort} from './effort.ts'
import {fewestPieces} from './fewest-pieces.ts'
import {firstCovers} from './first-covers.ts'
import {leastPieces} from './least-pieces.ts'
import {packQuickly} from './pack-quickly.ts'
import type {Pattern} from './patterns.ts'
import {placeMost} from './place-most.ts'
import {solveRoughly} from './solve-roughly.ts'
import type {Solved} from './solved.ts'
import type {Task} from './task.ts'
import {usedPieces} from './used-pieces.ts'

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
