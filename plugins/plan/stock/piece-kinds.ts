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
  const trim = wholeUnits(saw.trimMm)
  const kinds: (FreePiece & {wood: string})[] = []
  pieces.forEach((piece, index) => {
    const {lengthMm, widthMm, thicknessMm, wood, clearMm: [from, to] = [0, lengthMm]} = piece
    const clear = wholeUnits(Math.min(to, lengthMm)) - wholeUnits(Math.max(from, 0))
    const length = clear - 2 * trim + kerf + slackUnits
    const width = wholeUnits(widthMm) + kerf + slackUnits
    const thickness = wholeUnits(thicknessMm)
    const volume = lengthMm * widthMm * thicknessMm
    const known = kinds.find(
      (kind) =>
        kind.length === length &&
        kind.width === width &&
        kind.thickness === thickness &&
        kind.volume === volume &&
        kind.wood === wood,
    )
    if (known) {
      known.pieces.push(index)
      return
    }
    const suits: boolean[] = []
    const holds: number[] = []
    parts.forEach((part, at) => {
      const isSuited =
        (part.wood === 'any' || part.wood === wood) &&
        part.thickness <= thickness + slackUnits &&
        part.length <= length
      suits.push(isSuited)
      if (isSuited && part.width <= width) holds.push(at)
    })
    kinds.push({length, width, thickness, volume, wood, pieces: [index], suits, holds})
  })
  return kinds.filter(({holds}) => holds.length > 0)
}

/** Name the lanes of pieces: those whose strips are alike in length and in what they may hold, of the kinds `held`. */
export function lanesOf(
  pieces: readonly FreePiece[],
  held: readonly number[],
): {lanes: Lane[]; pieces: PieceKind[]} {
  const lanes: Lane[] = []
  const placed = pieces.map(({length, suits, width, thickness, volume, pieces: own}) => {
    const takes = held.map((at) => suits[at]!)
    const known = lanes.findIndex(
      (lane) => lane.length === length && lane.takes.every((takesIt, at) => takesIt === takes[at]),
    )
    const lane = known < 0 ? lanes.push({length, takes}) - 1 : known
    return {lane, width, thickness, volume, pieces: own}
  })
  return {lanes, pieces: placed}
}
