import {binsOf} from './bins-of.ts'
import {allPieces, choiceVolume} from './choice.ts'
import {choosePieces} from './choose-pieces.ts'
import {type DraftPiece, draft} from './draft.ts'
import type {Effort} from './effort.ts'
import {packQuickly} from './pack-quickly.ts'
import {isBetter} from './score.ts'
import type {Solved} from './solved.ts'
import type {Task} from './task.ts'
import {tidy} from './tidy.ts'

/** So many other choices of pieces of the same volume are looked at. */
const mostOthers = 12

/** With more parts than this other choices are not looked at. */
const mostParts = 60

/**
 * Of a solution, and of other choices of pieces with the same volume that hold the same parts, take the plan that
 * wastes least, keeps the longest offcut and sets the fence least often; the earlier pieces where they are equal.
 */
export function tidiest(
  task: Task,
  {chosen, steps, left, covers}: Solved,
  kerf: number,
  effort: Effort,
): readonly DraftPiece[] {
  let best = tidy(task, draft(task, chosen, steps), kerf)
  const volumes = task.pieces.map(({volume}) => volume)
  const all = allPieces(task)
  const counts = Int32Array.from(task.parts, ({ids}, at) => ids.length - left[at]!)
  if (counts.reduce((sum, n) => sum + n, 0) > mostParts) return best.plan
  const volume = choiceVolume(task, chosen)
  const seen = [chosen.join()]
  for (let other = 0; other < mostOthers && !effort.over; other++) {
    const not = (one: readonly number[]) => seen.includes(one.join())
    const next = choosePieces(volumes, all, covers, {not, under: volume}, effort)
    if (!Array.isArray(next)) break
    seen.push(next.join())
    const quick = packQuickly(task, counts, binsOf(task, next), 0, effort)
    if (!quick) continue
    const tidied = tidy(task, draft(task, next, quick.steps), kerf)
    if (isBetter(tidied.scores, best.scores)) best = tidied
  }
  return best.plan
}
