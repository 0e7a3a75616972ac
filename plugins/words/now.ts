import type {Plan} from '../plan/plan.ts'
import type {Waiting} from '../plan/work/waiting.ts'
import {billItem} from './bill.ts'
import {stepName} from './steps.ts'

/** Say what is left alone and until when: `Glue up the layers: since 2026-03-07, until 2026-03-08`. */
export function waitingInWords({id, on, until}: Waiting, {work = []}: Plan): string {
  const step = work.find((one) => one.id === id)!
  return `${stepName(step)}: since ${on}, until ${until}`
}

/** What a build still has to get: what neither its file paid for nor the rack gives, as a shop would name it. */
export function stillToGet(plan: Plan): {item: string; count: number}[] {
  return (plan.bill ?? [])
    .filter(({from}) => from !== 'cost' && from !== 'stock')
    .map(({item, count}) => ({item: billItem(item, plan), count}))
}
