import type {Plan} from '../plan/plan.ts'
import type {Cost} from '../plan/stock/cost.ts'
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
    ...fold('What to buy', [listed(plan), ...(plan.cost ? [costs(plan.cost)] : [])]),
  ],
}

/** List what has to be got; prices have their columns where anything has one. */
function listed(plan: Plan) {
  const rows = plan.bill ?? []
  const isPriced = rows.some(({total}) => total !== undefined)
  const prices = isPriced
    ? [
        {head: 'Each', align: 'right' as const},
        {head: 'Total', align: 'right' as const},
      ]
    : []
  return table({
    caption: 'Bill of materials',
    columns: [{head: 'Item'}, {head: 'Count', align: 'right'}, ...prices, {head: 'From'}],
    rows: rows.map(({item, count, each, total, from, proposed}) => [
      proposed ? `${billItem(item, plan)} (proposed)` : billItem(item, plan),
      number(count, 2),
      ...(isPriced ? [each?.toFixed(2) ?? '', money(total, plan.cost)] : []),
      from,
    ]),
  })
}

/** Count what has to be got, and what it comes to as far as prices are known. */
function billInWords({bill: rows = [], cost}: Plan) {
  const paid = cost?.materials === undefined ? '' : `, ${money(cost.materials, cost)} as far as priced`
  return [strong(`${rows.length} ${rows.length === 1 ? 'item' : 'items'}`), `${paid}.`]
}

function costs(cost: Cost) {
  const {materials, hours, dayHours = 0, total, price, left} = cost
  return facts([
    ...(materials === undefined ? [] : [['Materials', money(materials, cost)] as const]),
    ...(hours + dayHours > 0 ? [['Work', workInWords(cost)] as const] : []),
    ...(total === undefined ? [] : [['Total', money(total, cost)] as const]),
    ...(price === undefined ? [] : [['Price', money(price, cost)] as const]),
    ...(left === undefined ? [] : [leftOver(left, cost)]),
  ])
}

/** Say the hours, and at a rate what they come to: `11.5 h at 20.00 EUR: 230.00 EUR`. */
function workInWords({hours, dayHours = 0, rate, work, ...cost}: Cost): string {
  const spent = `${number(hours + dayHours, 1)} h`
  const guessed = dayHours > 0 ? `, ${number(dayHours, 1)} h of them on days without hours,` : ''
  return work === undefined ? spent : `${spent}${guessed} at ${money(rate, cost)}: ${money(work, cost)}`
}

/** Say what a price leaves for the work, or at a rate beyond it. */
function leftOver(left: number, cost: Cost): [string, string] {
  const {margin, hours} = cost
  if (margin !== undefined)
    return margin < 0
      ? ['Short of its cost', money(-margin, cost)]
      : ['Margin', margin === 0 ? 'none' : money(margin, cost)]
  const anHour = hours > 0 ? `, ${money(left / hours, cost)} an hour` : ''
  return ['Left for the work', money(left, cost) + anHour]
}

function money(amount: number | undefined, cost: Pick<Cost, 'currency'> | undefined): string {
  return amount === undefined ? '' : [amount.toFixed(2), cost?.currency ?? ''].join(' ').trim()
}
