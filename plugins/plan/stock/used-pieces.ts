import {allPieces} from './choice.ts'
import {draft} from './draft.ts'
import type {Step} from './search.ts'
import type {Task} from './task.ts'

/** Count how many pieces of each kind a cutting of all pieces really cuts. */
export function usedPieces(task: Task, steps: readonly Step[]): number[] {
  const used = task.pieces.map(() => 0)
  for (const {kind} of draft(task, allPieces(task), steps)) used[kind]!++
  return used
}
