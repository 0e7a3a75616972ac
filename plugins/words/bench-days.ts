import type {Plan} from '../plan/plan.ts'
import type {BenchDay, BenchTimes} from '../plan/work/bench-days.ts'
import {hoursInWords} from './quantities.ts'
import {stepName} from './steps.ts'

/** To half an hour: what a few days tell is no finer. */
const about = (hours: number): string => hoursInWords(Math.max(0.5, Math.round(hours * 2) / 2))

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`

/** Say how long the work takes at the bench, how long from the first day to the last, and what that rests on. */
export function daysInWords(
  days: readonly BenchDay[],
  dayH: number,
  {days: told, builds}: BenchTimes,
): string[] {
  const benchH = days.reduce((sum, {hours}) => sum + hours, 0)
  const last = days.at(-1)?.day ?? 0
  const waits = last > days.length ? ', since glue and finish are left alone between' : ''
  return [
    `About ${about(benchH)} at the bench, on ${counted(days.length, 'day')} of ${hoursInWords(dayH)}; ${counted(last, 'day')} from the first to the last${waits}.`,
    `Reckoned from the hours of ${counted(told, 'day')} of ${counted(builds, 'build')} in this journal, each day’s shared evenly between the steps that it names or brings with it.`,
  ]
}

/** Say what is done on a day: `Day 3, about 2.5 h: glue the head (then leave it 1 day), fit the blocks`. */
export function dayInWords({day, steps, hours}: BenchDay, {work = []}: Plan): string {
  const each = steps.flatMap((id) => {
    const step = work.find((one) => one.id === id)
    if (!step) return []
    const wait = step.waitH === undefined ? '' : ` (then leave it ${hoursInWords(step.waitH)})`
    return [`${stepName(step).toLowerCase()}${wait}`]
  })
  return `Day ${day}, about ${about(hours)}: ${each.join(', ')}.`
}

/** Say why no days are proposed yet. */
export const noDaysYet = (dayH: number): string =>
  `Days of ${hoursInWords(dayH)} are proposed here as soon as headings of this journal tell hours, as “2026-03-07 Milling (2 h)” does.`
