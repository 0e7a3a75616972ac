import type {SizedKind} from './part-kinds.ts'
import type {Lane, PieceKind, Saw, StockPiece} from './task.ts'
import {slackUnits, wholeUnits} from './whole-units.ts'

/** A kind of piece, before it is known which task it belongs to. */
export interface FreePiece extends Omit<PieceKind, 'lane'> {
  /** How long its strips are, a kerf and the slack added. */
  length: number
  /** By part kind: whether its wood, thickness and length suit. */
  suits: boolean[]
  /** The part kinds that fit in it. */
  holds: number[]
}

/** Put pieces alike together, in the order of the file; of each, what may be cut is its clear length less trim. */
export function pieceKinds(
  pieces: readonly StockPiece[],
  parts: readonly SizedKind[],
  saw: Saw,
): FreePiece[] {
  const kerf = wholeUnits(saw.kerfMm)
  const kinds = new Map<string, FreePiece>()
  pieces.forEach((piece, index) => {
    const [from, to] = piece.clearMm ?? [0, piece.lengthMm]
    const clear = wholeUnits(Math.min(to, piece.lengthMm)) - wholeUnits(Math.max(from, 0))
    const length = clear - 2 * wholeUnits(saw.trimMm) + kerf + slackUnits
    const width = wholeUnits(piece.widthMm) + kerf + slackUnits
    const thickness = wholeUnits(piece.thicknessMm)
    const volume = piece.lengthMm * piece.widthMm * piece.thicknessMm
    const key = `${length} ${width} ${thickness} ${volume} ${piece.wood}`
    const kind = kinds.get(key)
    if (kind) {
      kind.pieces.push(index)
      return
    }
    const suits = parts.map(
      (part) =>
        (part.wood === 'any' || part.wood === piece.wood) &&
        part.thickness <= thickness + slackUnits &&
        part.length <= length,
    )
    const holds = parts.flatMap((part, at) => (suits[at] && part.width <= width ? [at] : []))
    kinds.set(key, {length, width, thickness, volume, pieces: [index], suits, holds})
  })
  return [...kinds.values()].filter(({holds}) => holds.length > 0)
}

/** Name the lanes of pieces: those whose strips are alike in length and in what they may hold, of the kinds `held`. */
export function lanesOf(
  pieces: readonly FreePiece[],
  held: readonly number[],
): {lanes: Lane[]; pieces: PieceKind[]} {
  const lanes = new Map<string, Lane & {index: number}>()
  const placed = pieces.map(({length, suits, width, thickness, volume, pieces: own}) => {
    const takes = held.map((at) => suits[at]!)
    const key = `${length} ${takes.map(Number).join('')}`
    const lane = lanes.get(key) ?? {length, takes, index: lanes.size}
    lanes.set(key, lane)
    return {lane: lane.index, width, thickness, volume, pieces: own}
  })
  return {lanes: [...lanes.values()].map(({length, takes}) => ({length, takes})), pieces: placed}
}
