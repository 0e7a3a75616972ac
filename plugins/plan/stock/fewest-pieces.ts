import {allPieces} from './choice.ts'
import {type Cover, choosePieces} from './choose-pieces.ts'
import type {Effort} from './effort.ts'
import type {Task} from './task.ts'

/** Bound from below how many pieces a choice needs that meets the covers, where one is known that takes so many. */
export function fewestPieces(task: Task, covers: readonly Cover[], used: number, effort: Effort): number {
  const ones = task.pieces.map(() => 1)
  const found = choosePieces(ones, allPieces(task), covers, {under: used}, effort)
  return Array.isArray(found) ? found.reduce((sum, n) => sum + n, 0) : Math.min(used, 1)
}
