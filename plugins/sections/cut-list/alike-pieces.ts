import type {Cuts, SawnPieceShape} from '../../plan/shape/stock.ts'

/** Put pieces together that are the same wood and size, and are cut alike, whatever the names of their parts. */
export function alikePieces({pieces, parts}: Cuts): SawnPieceShape[][] {
  const of = new Map(parts.map((part) => [part.id, part.of]))
  const groups = new Map<string, SawnPieceShape[]>()
  for (const piece of pieces) {
    const {wood, lengthMm, widthMm, thicknessMm, fromMm, strips} = piece
    const cut = strips.map(({widthMm: width, cuts}) => [
      width,
      cuts.map(({partId, lengthMm: long}) => [of.get(partId), long]),
    ])
    const key = JSON.stringify([wood, lengthMm, widthMm, thicknessMm, fromMm, cut])
    groups.set(key, [...(groups.get(key) ?? []), piece])
  }
  return [...groups.values()]
}
