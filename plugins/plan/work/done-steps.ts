import {workKinds} from '../../tables/work-kinds.ts'
import type {PlacedStep} from './in-order.ts'
import {named} from './named.ts'

const strungUp = ['strung up', 'retired', 'sold', 'given']
/** What a heading says after one of these is still to come. */
const notYet = /\b(all but|before|without|no|not|waiting|ready for|for)\b.*$/is

/**
 * Find the steps that are done: those that a day's heading or a ticked task names, the stringing of a build that is
 * strung up (its setting up too, where it was measured), and all that must have come before any of these. The steps
 * are in an order that works.
 */
export function doneSteps(
  steps: readonly PlacedStep[],
  {told, status, isMeasured}: {told: readonly string[]; status: string | undefined; isMeasured: boolean},
): ReadonlySet<string> {
  const isNamed = named(told.map((text) => text.replace(notYet, '')).join(' / '))
  const isStrung = status !== undefined && strungUp.includes(status)
  const done = new Set<string>()
  for (let at = steps.length - 1; at >= 0; at--) {
    const {draft, after} = steps[at]!
    const {id, kind, words = workKinds[kind].words} = draft
    const isStrungSo = isStrung && (kind === 'string' || (isMeasured && kind === 'set-up'))
    if (!done.has(id) && !isStrungSo && !isNamed(words)) continue
    done.add(id)
    for (const before of after) done.add(before)
  }
  return done
}
