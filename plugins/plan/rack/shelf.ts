import type {StockPiece} from '../../build-file/schema.ts'
import type {Piece} from '../part.ts'

/** A piece on the rack. */
export interface ShelfPiece extends Piece {
  /** The day it came into the shop; absent: it was always there. */
  bought?: string
  remark?: string
  /** What it is left over from: there since the day that build was started. */
  from?: {build: string; piece: string; on: string}
}

/** The rack between two builds: what stands on it, and what became of pieces that no longer do. */
export interface Shelf {
  pieces: readonly ShelfPiece[]
  cut: readonly {id: string; by: string}[]
}

/** Stand the pieces of the rack file on the rack, `count: 6` as `A4.1` to `A4.6`; one without a size or id is left out. */
export function shelfOf(rack: readonly StockPiece[]): Shelf {
  const pieces = rack.flatMap(({id, wood, length, width, thickness, clear, count, remark, bought}) => {
    if (!id || !length || !width || !thickness) return []
    const [from, to] = clear ?? []
    const many = count?.value ?? 1
    return Array.from(
      {length: many},
      (_, k): ShelfPiece => ({
        id: many > 1 ? `${id.value}.${k + 1}` : id.value,
        wood: wood?.value ?? 'unknown',
        lengthMm: length.mm,
        widthMm: width.mm,
        thicknessMm: thickness.mm,
        ...(from && to && {clearMm: [from.mm, to.mm] as const}),
        ...(bought && {bought: bought.iso}),
        ...(remark && {remark: remark.value}),
      }),
    )
  })
  return {pieces, cut: []}
}
