import {partKinds, volumeStep} from './part-kinds.ts'
import {lanesOf, pieceKinds} from './piece-kinds.ts'
import type {Saw, StockPart, StockPiece, Task} from './task.ts'
import {wholeUnits} from './whole-units.ts'

/**
 * Group parts and pieces into kinds, and part them into tasks that share no wood.
 * Parts that fit in no piece are in no task; pieces that hold no part neither.
 */
export function tasksOf(parts: readonly StockPart[], pieces: readonly StockPiece[], saw: Saw): Task[] {
  const kinds = partKinds(parts, wholeUnits(saw.kerfMm))
  const step = volumeStep(parts)
  return hangingTogether(pieceKinds(pieces, kinds, saw)).map((group) => {
    const held = [...new Set(group.flatMap((piece) => piece.holds))].sort((a, b) => a - b)
    return {parts: held.map((at) => kinds[at]!), step, ...lanesOf(group, held)}
  })
}

/** Part pieces into groups that hold no part in common; groups and pieces keep the order of the file. */
function hangingTogether<P extends {holds: number[]}>(pieces: readonly P[]): P[][] {
  const order = new Map(pieces.map((piece, index) => [piece, index]))
  let groups: {holds: Set<number>; members: P[]}[] = []
  for (const piece of pieces) {
    const touching = groups.filter(({holds}) => piece.holds.some((at) => holds.has(at)))
    const joined = {
      holds: new Set([...touching.flatMap(({holds}) => [...holds]), ...piece.holds]),
      members: [...touching.flatMap(({members}) => members), piece],
    }
    groups = [...groups.filter((group) => !touching.includes(group)), joined]
  }
  return groups
    .map(({members}) => members.sort((a, b) => order.get(a)! - order.get(b)!))
    .sort((a, b) => order.get(a[0]!)! - order.get(b[0]!)!)
}
