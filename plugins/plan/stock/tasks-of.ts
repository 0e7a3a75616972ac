import {partKinds, volumeStep} from './part-kinds.ts'
import {type FreePiece, lanesOf, pieceKinds} from './piece-kinds.ts'
import {areaPrices} from './prices.ts'
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
    const isHeld = kinds.map(() => false)
    for (const {holds} of group) for (const at of holds) isHeld[at] = true
    const held = kinds.flatMap((_, at) => (isHeld[at] ? [at] : []))
    const task = {parts: held.map((at) => kinds[at]!), step, ...lanesOf(group, held)}
    return {...task, byArea: areaPrices(task)}
  })
}

/** Part pieces into groups that hold no part in common; groups and pieces keep the order of the file. */
function hangingTogether(pieces: readonly FreePiece[]): FreePiece[][] {
  // A group is led by its first piece; the others lead to it.
  const leads = pieces.map((_, p) => p)
  const leadOf = (p: number): number => (leads[p] === p ? p : leadOf(leads[p]!))
  const holders = new Map<number, number>()
  pieces.forEach(({holds}, p) => {
    for (const at of holds) {
      const one = leadOf(holders.get(at) ?? p)
      const other = leadOf(p)
      leads[Math.max(one, other)] = Math.min(one, other)
      holders.set(at, p)
    }
  })
  const groups = new Map<number, FreePiece[]>()
  pieces.forEach((piece, p) => {
    const lead = leadOf(p)
    const group = groups.get(lead)
    if (group) group.push(piece)
    else groups.set(lead, [piece])
  })
  return [...groups.values()]
}
