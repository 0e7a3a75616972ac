import type {DayEntry} from '../../build-file/schema/build.ts'
import {namesOf} from '../../tables/work-kinds.ts'
import type {Step} from './step.ts'
import {told} from './work-facts.ts'

/** A step whose glue or finish is left alone. */
export interface Waiting {
  /** The step. */
  id: string
  /** The day that tells of it. */
  on: string
  /** The first day on which it may be gone on with: whole days, since a journal tells no hour. */
  until: string
}

const dayMs = 86_400_000

/**
 * List the steps that still wait on a day (ISO): those that a day's heading names and whose wait (h) ends on it or
 * later. The last day that names a step counts.
 */
export function waitingOn(today: string, work: readonly Step[], days: readonly DayEntry[]): Waiting[] {
  return work.flatMap(({id, kind, waitH}): Waiting[] => {
    if (!waitH) return []
    const named = days.findLast(({title}) => told([title])(namesOf(id, kind).words))
    if (!named) return []
    const until = after(named.iso, Math.ceil(waitH / 24))
    return named.iso <= today && until >= today ? [{id, on: named.iso, until}] : []
  })
}

const after = (iso: string, days: number): string =>
  new Date(Date.parse(`${iso}T00:00:00Z`) + days * dayMs).toISOString().slice(0, 10)
