import type {Settled} from '../part.ts'
import type {Cuts} from '../shape/stock.ts'
import type {Saw, StockPart} from '../stock/task.ts'
import {nearestPiece} from './nearest-piece.ts'
import {sizeThatFits} from './size-that-fits.ts'
import type {PieceAtHand} from './stock-at-hand.ts'
import type {WantedPart} from './wanted-part.ts'

type Wanted = WantedPart & {id: string}

/** Say of each part that found no piece which one comes nearest, what it lacks and, for a single listed part, what fits. */
export function unplacedParts(
  unplaced: readonly Wanted[],
  {
    parts,
    pieces,
    saw,
    settled,
  }: {
    parts: readonly (StockPart & {of: string})[]
    pieces: readonly PieceAtHand[]
    saw: Saw
    settled: Settled
  },
): Cuts['unplaced'] {
  const known = new Map<string, ReturnType<typeof nearestPiece>>()
  return unplaced.map((part) => {
    const key = [part.woodRow, part.lengthMm, part.widthMm, part.thicknessMm].join(' ')
    const near = known.get(key) ?? nearestPiece(part, pieces, saw, settled)
    known.set(key, near)
    const {only, ...says} = near
    const wouldDo =
      unplaced.length === 1 ? sizeThatFits(part, parts, pieces, saw, only, settled.rulerMm) : undefined
    return {partId: part.id, ...says, ...(wouldDo && {wouldDo})}
  })
}
