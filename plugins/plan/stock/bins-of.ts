import type {Bin, Task} from './task.ts'

/** Make the bins of a choice of pieces, so many of each kind; kinds of which there are none are left out. */
export const binsOf = (task: Task, chosen: readonly number[]): Bin[] =>
  task.pieces.flatMap(({lane, width}, p) => (chosen[p]! > 0 ? [{lane, width, count: chosen[p]!}] : []))
