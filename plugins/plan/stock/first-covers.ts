import type {Cover} from './choose-pieces.ts'
import type {Task} from './task.ts'

/** Say what any choice of pieces must hold by plain reckoning: the area of all parts, and the number of each kind. */
export function firstCovers(task: Task, counts: Int32Array, mayLeave: number): Cover[] {
  const {atWidth, leftWorth, worths} = task.byArea
  const needed = counts.reduce((sum, n, at) => sum + n * worths[at]!, 0)
  const area: Cover = {
    worths: task.pieces.map((piece) => atWidth(piece.lane, piece.width)),
    needed: needed - leftWorth * mayLeave,
  }
  if (mayLeave > 0) return [area]
  const each = task.parts.map((part, at) => ({
    worths: task.pieces.map((piece) => {
      const lane = task.lanes[piece.lane]!
      return lane.takes[at] ? Math.floor(lane.length / part.length) * Math.floor(piece.width / part.width) : 0
    }),
    needed: counts[at]!,
  }))
  // Where any one piece could hold all of a kind, its number tells nothing.
  return [area, ...each.filter(({worths, needed: n}) => worths.some((worth) => worth < n))]
}
