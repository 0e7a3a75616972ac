import {binsOf} from './bins-of.ts'
import {allPieces, choiceVolume} from './choice.ts'
import {choosePieces} from './choose-pieces.ts'
import type {Effort} from './effort.ts'
import {fewestPieces} from './fewest-pieces.ts'
import {firstCovers} from './first-covers.ts'
import {quickCut} from './quick-cut.ts'
import type {Solved} from './solved.ts'
import type {Task} from './task.ts'
import {usedPieces} from './used-pieces.ts'

/** Cut thousands of different parts quickly, and bound by their area how far from the best that may be. */
export function solveRoughly(task: Task, counts: Int32Array, effort: Effort): Solved {
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
