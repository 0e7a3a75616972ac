import {binsOf} from './bins-of.ts'
import type {Effort} from './effort.ts'
import {type Packing, packInto} from './pack-into.ts'
import {packQuickly} from './pack-quickly.ts'
import type {Pattern} from './patterns.ts'
import type {Task} from './task.ts'
import {usedPieces} from './used-pieces.ts'

export interface Choice {
  packing: Packing
  /** How many pieces of each kind. */
  chosen: number[]
}

/** Do without pieces, the largest first, as long as the rest is soon seen to hold the parts. */
export function dropPieces(
  task: Task,
  counts: Int32Array,
  packing: Packing,
  mayLeave: number,
  pool: Pattern[],
  effort: Effort,
): Choice {
  const quickly = (chosen: readonly number[]) =>
    packQuickly(task, counts, binsOf(task, chosen), mayLeave, effort)
  const longer = (chosen: readonly number[]) =>
    packInto(task, counts, binsOf(task, chosen), mayLeave, pool, effort.part(effort.limit / 400)).packing
  const first = withFewer(task, {packing, chosen: usedPieces(task, packing.steps)}, mayLeave, quickly)
  // Where the quick way found little to drop, the longer one does more.
  const used = first.chosen.reduce((sum, n) => sum + n, 0)
  return used > mostForLonger ? first : withFewer(task, first, mayLeave, longer)
}

const mostForLonger = 20

function withFewer(
  task: Task,
  start: Choice,
  mayLeave: number,
  pack: (chosen: readonly number[]) => Packing | undefined,
): Choice {
  let best = start
  const order = task.pieces
    .map((_, p) => p)
    .sort((a, b) => task.pieces[b]!.volume - task.pieces[a]!.volume || b - a)
  for (const p of order)
    for (let step = best.chosen[p]!; step >= 1; ) {
      const chosen = best.chosen.map((n, at) => (at === p ? n - step : n))
      const packing = chosen[p]! < 0 ? undefined : pack(chosen)
      if (packing && packing.leftVolume <= mayLeave) best = {packing, chosen}
      else step >>= 1
    }
  return best
}
