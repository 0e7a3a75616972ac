import {binsOf} from './bins-of.ts'
import type {Cover} from './choose-pieces.ts'
import type {Packing} from './pack-into.ts'
import type {Task} from './task.ts'

export interface Choice {
  packing: Packing
  /** How many pieces of each kind. */
  chosen: number[]
}

/** Do without pieces, the largest first, as long as the rest meets the covers and `pack` finds that it holds the parts. */
export function dropPieces(
  task: Task,
  start: Choice,
  covers: readonly Cover[],
  pack: (bins: ReturnType<typeof binsOf>) => Packing | undefined,
): Choice {
  let best = start
  const holdsEnough = (chosen: readonly number[]) =>
    covers.every(({worths, needed}) => {
      const held = chosen.reduce((sum, n, p) => sum + n * worths[p]!, 0)
      return held >= needed - 1e-9 * Math.abs(needed)
    })
  const order = task.pieces
    .map((_, p) => p)
    .sort((a, b) => task.pieces[b]!.volume - task.pieces[a]!.volume || b - a)
  for (const p of order)
    for (let step = best.chosen[p]!; step >= 1; ) {
      const chosen = best.chosen.map((n, at) => (at === p ? n - step : n))
      const packing = chosen[p]! >= 0 && holdsEnough(chosen) ? pack(binsOf(task, chosen)) : undefined
      if (packing) best = {packing, chosen}
      else step >>= 1
    }
  return best
}
