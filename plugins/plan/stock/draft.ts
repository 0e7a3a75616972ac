import type {Step} from './search.ts'
import type {Task} from './task.ts'

/** A piece being planned: which kind of piece it is, and its strips, each the kinds of its parts. */
export interface DraftPiece {
  kind: number
  strips: number[][]
}

/** Give each strip its piece: those chosen are the first of their kind. Pieces that are not cut are left out. */
export function draft(task: Task, chosen: readonly number[], steps: readonly Step[]): DraftPiece[] {
  const rests = task.pieces.flatMap(({lane, width}, kind) =>
    Array.from({length: chosen[kind]!}, () => ({kind, lane, width, strips: [] as number[][]})),
  )
  // A task of thousands of parts has many rests alike: they wait in heaps by lane and width.
  const heaps = new Map<string, typeof rests>()
  const heapOf = (lane: number, width: number) => {
    const key = `${lane} ${width}`
    const known = heaps.get(key) ?? []
    heaps.set(key, known)
    return known
  }
  for (const rest of [...rests].reverse()) heapOf(rest.lane, rest.width).push(rest)
  for (const step of steps) {
    const rest = heapOf(step.lane, step.from).pop()!
    rest.strips.push(step.kinds.flatMap((at, k) => Array.from({length: step.copies[k]!}, () => at)))
    rest.width -= step.width
    heapOf(rest.lane, rest.width).push(rest)
  }
  return rests.filter(({strips}) => strips.length > 0).map(({kind, strips}) => ({kind, strips}))
}
