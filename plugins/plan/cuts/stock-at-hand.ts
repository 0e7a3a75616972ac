import type {Context, Settled} from '../part.ts'
import type {StockPiece} from '../stock/task.ts'
import {woodRow} from './wood-row.ts'

/** A piece that this build may cut. */
export interface PieceAtHand extends StockPiece {
  /** As the file or the rack names it; one of several alike is `A4.1`, listed as `A4`. */
  stockId: string
  woodName: string
  /** From the rack, not listed by the build itself. */
  isFromRack: boolean
}

/** List the pieces that a build names: its own stock in file order, then those it takes from the rack, each once. */
export function stockAtHand({values}: Settled, {pieces}: Context, mostAlike: number): PieceAtHand[] {
  const own = (values.stock ?? []).flatMap((piece, i): PieceAtHand[] => {
    const {length, width, thickness, clear} = piece
    if (!length || !width || !thickness) return []
    const count = piece.count?.value ?? 1
    const stockId = piece.id?.value ?? `piece ${i + 1}`
    const {wood: woodName, woodRow: wood} = woodRow(piece)
    const [from, to] = clear ?? []
    return Array.from({length: Math.min(count, mostAlike)}, (_, k) => ({
      id: count > 1 ? `${stockId}.${k + 1}` : stockId,
      stockId,
      wood,
      woodName,
      lengthMm: length.mm,
      widthMm: width.mm,
      thicknessMm: thickness.mm,
      isFromRack: false,
      ...(from && to && {clearMm: [from.mm, to.mm] as const}),
    }))
  })
  const taken = new Set(values.take?.map(({value}) => value))
  const fromRack = pieces
    .filter((piece) => taken.has(piece.id) || taken.has(piece.id.replace(/\.\d+$/, '')))
    .map(({id, wood, lengthMm, widthMm, thicknessMm, clearMm}): PieceAtHand => {
      const named = woodRow({wood: {value: wood}})
      const sizes = {lengthMm, widthMm, thicknessMm, ...(clearMm && {clearMm})}
      return {id, stockId: id, wood: named.woodRow, woodName: named.wood, ...sizes, isFromRack: true}
    })
  return [...own, ...fromRack]
}
