import type {Plan} from '../../plan/shape/plan.ts'
import {number} from '../kit.ts'
import {hoursInWords} from './hours-in-words.ts'

/** Say how far the build is, and how long its waits and its days take: a sentence each. */
export function howFar({work = [], workTime}: Plan): string[] {
  const done = work.filter(({isDone}) => isDone).length
  const next = work.find(({isDone}) => !isDone)
  const {waitH = 0, benchH} = workTime ?? {}
  return [
    `${done} of ${work.length} steps done${next && done > 0 ? `; next: ${next.step}` : ''}.`,
    ...(waitH > 0 ? [`Glue and finish ask for ${hoursInWords(waitH)} of waiting at least.`] : []),
    ...(benchH === undefined ? [] : [`The days told of so far: ${number(benchH, 1)} h at the bench.`]),
  ]
}
