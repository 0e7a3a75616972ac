import type {Context, Settled} from '../part.ts'
import type {Plan} from '../shape/plan.ts'
import type {BillRow} from '../shape/work.ts'
import {totalled} from './totalled.ts'

/** List the pieces that are cut, with what they cost where that is known, and the boards still to be bought. */
export function woodItems({values}: Settled, {cuts}: Plan, {pieces}: Context): BillRow[] {
  if (!cuts) return []
  const counts = new Map<string, {wood: string; count: number}>()
  for (const {stockId, wood} of cuts.pieces) {
    const known = counts.get(stockId)
    counts.set(stockId, {wood, count: (known?.count ?? 0) + 1})
  }
  const cost = (id: string) =>
    values.stock?.find((piece, i) => (piece.id?.value ?? `piece ${i + 1}`) === id)?.cost?.amount ??
    pieces.find((piece) => piece.id === id)?.cost
  return [
    ...[...counts].map(([id, {wood, count}]) =>
      totalled({item: `${wood}, ${id}`, count, from: 'stock'}, cost(id)),
    ),
    ...cuts.bought.map(({wood, size, count}) => ({
      item: `${wood === 'any' ? '' : `${wood} `}board, ${size}`,
      count,
      from: 'to buy',
    })),
  ]
}
