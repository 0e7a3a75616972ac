import {laneWorth} from './best-strips.ts'
import type {Cover} from './choose-pieces.ts'
import type {Effort} from './effort.ts'
import type {Task} from './task.ts'

/** Turn worths of parts into a condition on any choice of pieces that may leave so much volume uncut. */
export function coverOf(
  task: Task,
  counts: ArrayLike<number>,
  {worths, leftWorth}: {worths: ArrayLike<number>; leftWorth: number},
  mayLeave: number,
  effort: Effort,
): Cover {
  const widest = task.lanes.map((_, lane) =>
    Math.max(0, ...task.pieces.filter((piece) => piece.lane === lane).map((piece) => piece.width)),
  )
  const lanes = widest.map((width, lane) => laneWorth(task, lane, counts, worths, width, effort))
  let needed = -leftWorth * mayLeave
  for (let at = 0; at < counts.length; at++) needed += counts[at]! * worths[at]!
  return {worths: task.pieces.map((piece) => lanes[piece.lane]!.atWidth(piece.width)), needed}
}
