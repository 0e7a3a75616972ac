import type {BillRow} from '../shape/work.ts'

/** Sums of money keep no idle digits of a binary fraction. */
export const money = (amount: number): number => Number(amount.toFixed(6))

/** Put the price of one and of all beside an item; without a price neither. */
export function totalled(row: Omit<BillRow, 'each' | 'total'>, each: number | undefined): BillRow {
  return each === undefined ? row : {...row, each, total: money(row.count * each)}
}
