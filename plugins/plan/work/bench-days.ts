import type {DayEntry} from '../../build-file/schema/build.ts'
import {namesOf} from '../../tables/work-kinds.ts'
import type {Step} from './step.ts'
import {told} from './work-facts.ts'

/** How long steps took at a journal's own bench, and what that rests on. */
export interface BenchTimes {
  /** Mean hours of each kind of step that its days tell of. */
  hours: ReadonlyMap<Step['kind'], number>
  /** Mean hours of any step. */
  anyH: number
  /** How many days told their hours, of how many builds. */
  days: number
  builds: number
}

interface ToldBuild {
  work: readonly Step[]
  days: readonly DayEntry[]
}

/**
 * Reckon how long each kind of step took (h): the hours of a day are shared evenly between the steps that its heading
 * names and those that must have come before them since the day before. Undefined where no day tells its hours.
 */
export function benchTimes(builds: readonly ToldBuild[]): BenchTimes | undefined {
  const shares = builds.map(sharesOf)
  const told = shares.flat()
  const all = told.flatMap(({kinds, hours}) => kinds.map((kind) => ({kind, hours: hours / kinds.length})))
  if (all.length === 0) return undefined
  const kinds = new Map<Step['kind'], number[]>()
  for (const {kind, hours} of all) kinds.set(kind, [...(kinds.get(kind) ?? []), hours])
  return {
    hours: new Map([...kinds].map(([kind, each]) => [kind, mean(each)])),
    anyH: mean(all.map(({hours}) => hours)),
    days: told.length,
    builds: shares.filter((days) => days.length > 0).length,
  }
}

const mean = (all: readonly number[]): number => all.reduce((sum, one) => sum + one, 0) / all.length

/** List the days of a build that tell hours, each with the kinds of step that came to be done on it. */
function sharesOf({work, days}: ToldBuild): {kinds: Step['kind'][]; hours: number}[] {
  const done = new Set<string>()
  return [...days]
    .sort((a, b) => (a.iso < b.iso ? -1 : 1))
    .flatMap(({title, minutes = 0}) => {
      const isNamed = told([title])
      const now = new Set<string>()
      for (const {id, kind, after} of [...work].reverse())
        if (now.has(id) || isNamed(namesOf(id, kind).words)) for (const one of [id, ...after]) now.add(one)
      const kinds = work.filter(({id}) => now.has(id) && !done.has(id)).map(({kind}) => kind)
      for (const id of now) done.add(id)
      return minutes > 0 && kinds.length > 0 ? [{kinds, hours: minutes / 60}] : []
    })
}

/** A day at the bench: which day it is, the first being 1, its steps, and how long they take (h). */
export interface BenchDay {
  day: number
  steps: string[]
  hours: number
}

/**
 * Propose which steps to do on which day, days of one length (h) following each other: the first in order whose glue or
 * finish is ready and that the day has room for. Days on which all waits are left out; a step longer than a day goes on
 * into the next.
 */
export function proposeDays(work: readonly Step[], dayH: number, times: BenchTimes): BenchDay[] {
  const ready = new Map(work.filter(({isDone}) => isDone).map(({id}) => [id, 0]))
  let open = work.filter(({isDone}) => !isDone)
  const days: BenchDay[] = []
  let at = 0
  let spentH = 0
  while (open.length > 0) {
    const now = at * 24 + spentH
    const next = open.find((step) => {
      const isFree = step.after.every((id) => (ready.get(id) ?? Number.POSITIVE_INFINITY) <= now)
      return isFree && (spentH === 0 || spentH + hoursOf(step, times) <= dayH + 1e-9)
    })
    if (!next || spentH >= dayH) {
      at += 1
      spentH = Math.max(0, spentH - dayH)
      continue
    }
    const hours = hoursOf(next, times)
    const here = days.at(-1)
    if (here?.day === at + 1) {
      here.steps.push(next.id)
      here.hours += hours
    } else days.push({day: at + 1, steps: [next.id], hours})
    spentH += hours
    const into = Math.max(0, Math.ceil(spentH / dayH - 1e-9) - 1)
    ready.set(next.id, (at + into) * 24 + spentH - into * dayH + (next.waitH ?? 0))
    open = open.filter((step) => step !== next)
  }
  return days
}

const hoursOf = ({kind}: Step, {hours, anyH}: BenchTimes): number => hours.get(kind) ?? anyH
