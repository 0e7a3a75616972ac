import {proposedAt} from '../../build-file/schema/path.ts'
import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Context, Lot} from '../kit/context.ts'
import type {Settled} from '../kit/settled.ts'
import {money} from './cost.ts'
import type {Cuts} from './cut-list.ts'
import {type Asked, type BillItem, type Needed, neededItems, oneAString} from './needed.ts'
import {pieceId} from './stock-at-hand.ts'

export interface BillRow {
  item: BillItem
  count: number
  each?: number | undefined
  total?: number | undefined
  /** What asks for it: a path of the build file, `stock` or `to buy`. */
  from: string
  /** What of the rack it comes from, where that is no wood. */
  lot?: string | undefined
  /** What asks for it is proposed. */
  proposed?: true | undefined
  /** What of the rack would do, though the build does not take it. */
  atHand?: string | undefined
}

/**
 * List what has to be got: what the file says was paid for, what it takes from the rack, then strings, and hardware and
 * wood that the design asks for and neither of them gives. Undefined where there is nothing to get.
 */
export function planBill(
  settled: Settled,
  asked: Asked & {cuts: Cuts | undefined},
  {pieces, lots}: Context,
): BillRow[] | undefined {
  const paid = (settled.values.cost ?? []).flatMap(({item, count, each}): BillRow[] =>
    item ? [totalled({item: item.value, count: count?.value ?? 1, from: 'cost'}, each?.amount)] : [],
  )
  const names = (settled.values.cost ?? []).flatMap(({item}) => item?.value ?? [])
  const isListed = ({isCalled}: Needed) => names.some(isCalled)
  const {rows: given, left: needed} = fromLots(
    neededItems(settled.values, asked),
    lotsTaken(settled.values, lots),
    oneAString(settled.values),
  )
  const wanted = needed
    .filter((one) => !isListed(one))
    .map(({item, count, from, isCalled}): BillRow => {
      const atHand = lots?.find((lot) => isCalled(lot.item))?.id
      return {item, count, from, proposed: proposedAt(settled.values, from), atHand}
    })
  const wood = woodItems(settled, asked.cuts, pieces)
  const rows = [...paid, ...given, ...wanted, ...wood]
  return rows.length > 0 ? rows : undefined
}

/** List the lots of the rack that a build takes from, those that have come into the shop. */
function lotsTaken({take = []}: BuildValues, lots: Context['lots'] = []): Lot[] {
  const named = new Set(take.map(({value}) => value))
  return lots.filter(({id}) => named.has(id))
}

/**
 * Give what is needed from the lots that are taken: as many as the design asks for and the lot has; of what it asks for
 * by no name as many as are usual, or one. `left` is what is still to be got.
 */
function fromLots(
  needed: readonly Needed[],
  lots: readonly Lot[],
  usual: readonly Pick<Needed, 'count' | 'isCalled'>[],
): {rows: BillRow[]; left: Needed[]} {
  let left = [...needed]
  const rows = lots.map((lot) => {
    const inSet = left.filter(({isCalled, isInSet}) => !isCalled(lot.item) && isInSet?.(lot.item))
    const of = left.find(({isCalled}) => isCalled(lot.item))
    const {count: wanted} = of ?? usual.find(({isCalled}) => isCalled(lot.item)) ?? {count: 1}
    const count = Math.min(wanted, lot.count)
    left = of
      ? left.flatMap((one) => (one === of ? lessBy(one, count) : [one]))
      : left.filter((one) => !inSet.includes(one))
    return totalled({item: lot.item, count, from: 'stock', lot: lot.id}, lot.each)
  })
  return {rows, left}
}

const lessBy = (one: Needed, count: number): Needed[] =>
  one.count > count ? [{...one, count: one.count - count}] : []

/** List the pieces that are cut, with what they cost where that is known, and the boards still to be bought. */
function woodItems({values}: Settled, cuts: Cuts | undefined, pieces: Context['pieces']): BillRow[] {
  if (!cuts) return []
  const counts = new Map<string, {wood: string; count: number}>()
  for (const {stockId, wood} of cuts.pieces) {
    const known = counts.get(stockId)
    counts.set(stockId, {wood, count: (known?.count ?? 0) + 1})
  }
  const cost = (id: string) =>
    values.stock?.find((piece, i) => pieceId(piece, i) === id)?.cost?.amount ??
    pieces.find((piece) => piece.id === id)?.cost
  return [
    ...[...counts].map(([id, {wood, count}]) =>
      totalled({item: {is: 'wood', wood, id}, count, from: 'stock'}, cost(id)),
    ),
    ...cuts.bought.map(
      ({wood, nominal, widthMm, count}): BillRow => ({
        item: {is: 'board', wood, nominal, widthMm},
        count,
        from: 'to buy',
      }),
    ),
  ]
}

/** Put the price of one and of all beside an item; without a price neither. */
function totalled(row: Omit<BillRow, 'each' | 'total'>, each: number | undefined): BillRow {
  return each === undefined ? row : {...row, each, total: money(row.count * each)}
}
