import {binsOf} from './bins-of.ts'
import type {Effort} from './effort.ts'
import {lessLeft} from './less-left.ts'
import {type Packing, packInto} from './pack-into.ts'
import {packQuickly} from './pack-quickly.ts'
import type {Pattern} from './patterns.ts'
import type {Task} from './task.ts'

/** Find a cutting of all pieces that places the greatest volume of parts. */
export function placeMost(
  task: Task,
  counts: Int32Array,
  pool: Pattern[],
  effort: Effort,
): {packing: Packing; proven: boolean} {
  const all = task.pieces.map(({pieces}) => pieces.length)
  const bins = binsOf(task, all)
  let best: Packing = packQuickly(task, counts, bins, 0, effort)
  if (best.leftVolume === 0) return {packing: best, proven: true}
  const whole = packInto(task, counts, bins, 0, pool, effort.part(effort.limit / 3))
  if (whole.packing) return {packing: whole.packing, proven: true}
  for (;;) {
    const less = lessLeft(task, best.leftVolume)
    const next = packInto(task, counts, bins, less, pool, effort.part(effort.limit * 0.6), {isForBest: true})
    if (next.packing) best = next.packing
    // One round settles it, or finds what the next round starts from.
    if (next.ended || !next.packing || effort.over) return {packing: best, proven: next.ended}
  }
}
