import {coverOf} from './cover-of.ts'
import type {Effort} from './effort.ts'
import type {Pattern} from './patterns.ts'
import {relax} from './relax.ts'
import type {Bin, Task} from './task.ts'
import {withoutRoom} from './without-room.ts'

/** A bound so near does not rise any more. */
const mostSteps = 12

/**
 * Bound from below the volume (mm³) that any cutting of all pieces leaves uncut. Each relaxed cutting that may leave
 * too little tells by its prices how much more it would have to leave (Newton's method on the relaxed share).
 */
export function leastLeft(
  task: Task,
  counts: Int32Array,
  bins: readonly Bin[],
  pool: Pattern[],
  effort: Effort,
): number {
  const misfit = withoutRoom(task, counts, bins)
  const fitting = counts.map((count, at) => (misfit.kinds.has(at) ? 0 : count))
  let left = task.step / 2
  for (let step = 0; step < mostSteps && !effort.over; step++) {
    const relaxed = relax(task, fitting, bins, left, pool, effort)
    if (relaxed.bound <= 1 + 1e-9 || relaxed.leftWorth <= 0) break
    const {worths, needed} = coverOf(task, fitting, relaxed, left, effort)
    const held = task.pieces.reduce((sum, {pieces}, p) => sum + pieces.length * worths[p]!, 0)
    const next = left + (needed - held) / relaxed.leftWorth
    if (next <= left * (1 + 1e-12)) break
    left = next
  }
  return misfit.volume + left
}
