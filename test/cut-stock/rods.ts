import type {StockPart, StockPiece} from '../../plugins/cut-stock/cut-stock.ts'

const section = {wood: 'beech', widthMm: 20, thicknessMm: 10}

/** Make rods of one section: so many parts of each length, and enough pieces of one length, or those given. */
export function rods(
  stockMm: number | readonly (readonly [lengthMm: number, count: number])[],
  demand: readonly (readonly [lengthMm: number, count: number])[],
): {parts: StockPart[]; pieces: StockPiece[]} {
  const many = (rows: readonly (readonly [number, number])[], name: string) =>
    rows.flatMap(([lengthMm, count], i) =>
      Array.from({length: count}, (_, k) => ({id: `${name}${i + 1}.${k + 1}`, lengthMm, ...section})),
    )
  const parts = many(demand, 'part ')
  return {parts, pieces: many(typeof stockMm === 'number' ? [[stockMm, parts.length]] : stockMm, 'piece ')}
}
