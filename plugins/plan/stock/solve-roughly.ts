import {binsOf} from './bins-of.ts'
import {choosePieces} from './choose-pieces.ts'
import type {Effort} from './effort.ts'
import {firstCovers} from './first-covers.ts'
import {quickCut} from './quick-cut.ts'
import type {Solved} from './solved.ts'
import type {Task} from './task.ts'
import {usedPieces} from './used-pieces.ts'

/** Cut thousands of different parts quickly, and bound by their area how far from the best that may be. */
export function solveRoughly(task: Task, counts: Int32Array, effort: Effort): Solved {
  const all = task.pieces.map(({pieces}) => pieces.length)
  const volumes = task.pieces.map(({volume}) => volume)
  const volumeOf = (chosen: readonly number[]) => chosen.reduce((sum, n, p) => sum + n * volumes[p]!, 0)
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
  const covers = firstCovers(task, counts, leftVolume).slice(0, 1)
  const least = choosePieces(volumes, all, covers, {under: volumeOf(chosen)}, effort)
  const fewest = choosePieces(
    volumes.map(() => 1),
    all,
    covers,
    {under: used},
    effort,
  )
  const boundVolume = Array.isArray(least) ? volumeOf(least) : 0
  return {
    steps,
    chosen,
    left,
    proven: leftVolume === 0 && boundVolume >= volumeOf(chosen) * (1 - 1e-9),
    mayPlaceMore: leftVolume,
    boundVolume,
    boundPieces: Array.isArray(fewest) ? fewest.reduce((sum, n) => sum + n, 0) : Math.min(used, 1),
    covers,
  }
}
