import type {Cuts} from '../shape/stock.ts'
import type {RackBuild} from './in-rack-order.ts'
import {offcutName} from './offcut-name.ts'
import type {Shelf, ShelfPiece} from './shelf.ts'

/**
 * Leave the rack as it stands after a build: the pieces it cut are gone, their offcuts stand there under new names, by
 * falling length; what it took and did not cut stands where it stood. An idea, and a build without a date, changes
 * nothing.
 */
export function putBack(shelf: Shelf, {slug, values}: RackBuild, cuts: Cuts | undefined): Shelf {
  const {started} = values
  if (!cuts || !started || values.status?.value === 'idea') return shelf
  const isOwn = new Set((values.stock ?? []).map(({id}, i) => id?.value ?? `piece ${i + 1}`))
  const cut = cuts.pieces.filter(({stockId}) => !isOwn.has(stockId)).map(({id}) => ({id, by: slug}))
  const offcuts = cuts.pieces.flatMap((piece) =>
    piece.offcuts.map(({lengthMm, widthMm, thicknessMm}, i): ShelfPiece => {
      const name = `${piece.id}-${offcutName(i)}`
      return {
        id: isOwn.has(piece.stockId) ? `${slug}.${name}` : name,
        wood: piece.wood,
        lengthMm,
        widthMm,
        thicknessMm,
        from: {build: slug, piece: piece.id, on: started.iso},
      }
    }),
  )
  const isCut = new Set(cut.map(({id}) => id))
  return {
    pieces: [...shelf.pieces.filter(({id}) => !isCut.has(id)), ...offcuts],
    cut: [...shelf.cut, ...cut],
  }
}
