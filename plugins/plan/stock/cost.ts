import type {JournalSettings} from '../../build-file/schema/schema.ts'
import type {Settled} from '../kit/settled.ts'

/** What it costs, in the journal's currency. */
export interface Cost {
  /** What has a price, summed; absent where nothing has. */
  materials?: number | undefined
  /** What the days of the journal add up to (h). */
  hours: number
  /** Days without hours, each as long as the journal's `day` (h); only where hours have a rate. */
  dayHours?: number | undefined
  /** What an hour counts for. */
  rate?: number | undefined
  /** The hours of both kinds at that rate. */
  work?: number | undefined
  /** Materials and work; without a rate the materials alone. */
  total?: number | undefined
  /** What it was sold for, or would be. */
  price?: number | undefined
  /** The price less the materials: what is left for the work. */
  left?: number | undefined
  /** The price less materials and work, where hours have a rate: below zero where it does not pay for them. */
  margin?: number | undefined
  currency?: string | undefined
}

/**
 * Sum what has a price, and the hours at the journal's rate, beside the price of the instrument. Undefined where there
 * is nothing to sum.
 */
export function planCost(
  {values, minutes = 0, days}: Settled,
  bill: readonly {total?: number | undefined}[] | undefined,
  {currency, rate, day}: JournalSettings,
): Cost | undefined {
  const totals = (bill ?? []).flatMap(({total}) => total ?? [])
  const materials = totals.length > 0 ? money(totals.reduce((sum, one) => sum + one, 0)) : undefined
  const hours = minutes / 60
  const untold = rate ? days.filter((one) => one.minutes === undefined).length : 0
  const dayHours = (untold * (day?.minutes ?? 0)) / 60
  const spentH = hours + dayHours
  const work = rate && spentH > 0 ? money(spentH * rate.amount) : undefined
  const price = values.price?.amount
  if (materials === undefined && spentH === 0 && price === undefined) return undefined
  return {
    materials,
    hours,
    dayHours: dayHours || undefined,
    rate: work === undefined ? undefined : rate?.amount,
    work,
    total: materials === undefined && work === undefined ? undefined : money((materials ?? 0) + (work ?? 0)),
    price,
    left: price === undefined ? undefined : money(price - (materials ?? 0)),
    margin: price === undefined || work === undefined ? undefined : money(price - (materials ?? 0) - work),
    currency: currency?.value,
  }
}

/** Sums of money keep no idle digits of a binary fraction. */
export const money = (amount: number): number => Number(amount.toFixed(6))
