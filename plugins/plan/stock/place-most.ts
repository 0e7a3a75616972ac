import {binsOf} from './bins-of.ts'
import type {Effort} from './effort.ts'
import {type Packing, packInto, packQuickly} from './pack-into.ts'
import type {Pattern} from './relax.ts'
import type {Task} from './task.ts'

/** Find a cutting of all pieces that places the greatest volume of parts. */
export function placeMost(
  task: Task,
  counts: Int32Array,
  pool: Pattern[],
  effort: Effort,
): {packing: Packing; proven: boolean} {
  const bins = binsOf(
    task,
    task.pieces.map(({pieces}) => pieces.length),
  )
  let best: Packing = {verdict: 'found', ...packQuickly(task, counts, bins, 0, effort)}
  for (let goal = 0; best.leftVolume > goal; ) {
    const next = packInto(task, counts, bins, goal, pool, effort.part(effort.limit / 2))
    if (next.verdict === 'found') best = next
    else if (goal > 0 || next.verdict === 'unknown') return {packing: best, proven: next.verdict === 'none'}
    goal = best.leftVolume * (1 - 1e-9)
  }
  return {packing: best, proven: true}
}
