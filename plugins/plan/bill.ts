import {impliedItems, type Needed} from './bill/implied-items.ts'
import {stringItems} from './bill/string-items.ts'
import {money, totalled} from './bill/totalled.ts'
import {woodItems} from './bill/wood-items.ts'
import type {PlanPart} from './part.ts'
import type {BillRow} from './shape/work.ts'

/**
 * List what has to be got: what the file says was paid for, then strings, and hardware and wood that the design asks
 * for and the file's list does not name. `cost` sums what has a price, in the journal's currency, beside the hours (h) of
 * the days. Absent where there is nothing to get, or nothing to sum.
 */
export const bill: PlanPart = (settled, plan, context) => {
  const paid = (settled.values.cost ?? []).flatMap(({item, count, each}): BillRow[] =>
    item ? [totalled({item: item.value, count: count?.value ?? 1, from: 'cost'}, each?.amount)] : [],
  )
  const isListed = ({isCalled}: Needed) => paid.some(({item}) => isCalled(item))
  const needed = impliedItems(settled, plan)
    .filter((one) => !isListed(one))
    .map(({item, count, from}): BillRow => ({item, count, from}))
  const rows = [...paid, ...stringItems(plan), ...needed, ...woodItems(settled, plan, context)]
  const priced = rows.filter(({total}) => total !== undefined)
  const materials = money(priced.reduce((sum, {total = 0}) => sum + total, 0))
  const hours = (settled.minutes ?? 0) / 60
  const {currency} = context.journal
  return {
    ...(rows.length > 0 && {bill: rows}),
    ...((priced.length > 0 || hours > 0) && {
      cost: {
        ...(priced.length > 0 && {materials, total: materials}),
        hours,
        ...(currency && {currency: currency.value}),
      },
    }),
  }
}
