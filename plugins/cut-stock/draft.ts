import type {Step} from './search.ts'
import {allPieces, type Task} from './task.ts'

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
  const heaps = task.lanes.map(() => new Map<number, typeof rests>())
  const putDown = (rest: (typeof rests)[number]) => {
    const heap = heaps[rest.lane]!.get(rest.width)
    if (heap) heap.push(rest)
    else heaps[rest.lane]!.set(rest.width, [rest])
  }
  for (let at = rests.length - 1; at >= 0; at--) putDown(rests[at]!)
  for (const {lane, from, width, kinds, copies} of steps) {
    const rest = heaps[lane]!.get(from)!.pop()!
    const strip: number[] = []
    kinds.forEach((kind, k) => {
      for (let copy = 0; copy < copies[k]!; copy++) strip.push(kind)
    })
    rest.strips.push(strip)
    rest.width -= width
    putDown(rest)
  }
  return rests.filter(({strips}) => strips.length > 0).map(({kind, strips}) => ({kind, strips}))
}

/** Count how many pieces of each kind a cutting of all pieces really cuts. */
export function usedPieces(task: Task, steps: readonly Step[]): number[] {
  const used = task.pieces.map(() => 0)
  for (const {kind} of draft(task, allPieces(task), steps)) used[kind]!++
  return used
}
