import type {Cost} from '../plan/bill.ts'
import type {Plan} from '../plan/plan.ts'
import {billItem} from '../words/bill.ts'
import {number} from '../words/quantities.ts'
import {facts, fold, paragraph, strong} from './kit.ts'
import {table} from './kit-table.ts'
import type {Section} from './section.ts'

/** What has to be got, and what was paid for it. */
export const bill: Section = {
  name: 'bill',
  title: 'Bill of materials',
  needs: ({plan}) => (plan.bill?.length ? [] : ['cost']),
  content: ({plan}) => [
    paragraph(...billInWords(plan)),
    ...fold('What to buy', [
      table({
        caption: 'Bill of materials',
        columns: [
          {head: 'Item'},
          {head: 'Count', align: 'right'},
          {head: 'Each', align: 'right'},
          {head: 'Total', align: 'right'},
          {head: 'From'},
        ],
        rows: (plan.bill ?? []).map(({item, count, each, total, from, proposed}) => [
          proposed ? `${billItem(item, plan)} (proposed)` : billItem(item, plan),
          number(count, 2),
          each?.toFixed(2) ?? '',
          money(total, plan.cost),
          from,
        ]),
      }),
      ...(plan.cost ? [costs(plan.cost)] : []),
    ]),
  ],
}

/** Count what has to be got, and what it comes to as far as prices are known. */
function billInWords({bill: rows = [], cost}: Plan) {
  const paid = cost?.materials === undefined ? '' : `, ${money(cost.materials, cost)} as far as priced`
  return [strong(`${rows.length} ${rows.length === 1 ? 'item' : 'items'}`), `${paid}.`]
}

function costs(cost: Cost) {
  return facts([
    ...(cost.materials === undefined ? [] : [['Materials', money(cost.materials, cost)] as const]),
    ...(cost.hours > 0 ? [['Work', `${number(cost.hours, 1)} h`] as const] : []),
    ...(cost.total === undefined ? [] : [['Total', money(cost.total, cost)] as const]),
    ...(cost.price === undefined ? [] : [['Price', money(cost.price, cost)] as const]),
    ...(cost.left === undefined ? [] : [['Left for the work', leftForWork(cost.left, cost)] as const]),
  ])
}

function leftForWork(left: number, cost: Cost): string {
  const anHour = cost.hours > 0 ? `, ${money(left / cost.hours, cost)} an hour` : ''
  return money(left, cost) + anHour
}

function money(amount: number | undefined, cost: Cost | undefined): string {
  return amount === undefined ? '' : [amount.toFixed(2), cost?.currency ?? ''].join(' ').trim()
}
