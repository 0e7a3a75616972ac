import {binsOf} from './bins-of.ts'
import type {Effort} from './effort.ts'
import {type Packing, packQuickly} from './pack-into.ts'
import type {Task} from './task.ts'

/** Do without pieces, the largest first, as long as the rest still holds the parts. */
export function dropPieces(
  task: Task,
  counts: Int32Array,
  packing: Packing,
  mayLeave: number,
  effort: Effort,
): {packing: Packing; chosen: number[]} {
  let best = {packing, chosen: task.pieces.map(({pieces}) => pieces.length)}
  const order = task.pieces
    .map((_, p) => p)
    .sort((a, b) => task.pieces[b]!.volume - task.pieces[a]!.volume || b - a)
  for (const p of order)
    for (let step = best.chosen[p]!; step >= 1; ) {
      const chosen = [...best.chosen]
      chosen[p]! -= step
      const quick =
        chosen[p]! < 0 ? undefined : packQuickly(task, counts, binsOf(task, chosen), mayLeave, effort)
      if (quick && quick.leftVolume <= mayLeave) best = {packing: {verdict: 'found', ...quick}, chosen}
      else step >>= 1
    }
  return best
}
