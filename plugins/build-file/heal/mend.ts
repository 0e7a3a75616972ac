import {plainLines} from '../reading/front-matter.ts'
import {leavesOf} from '../schema/path.ts'
import type {Problem} from '../schema/problem.ts'
import {applied, type Change, changeBetween, editsOf} from '../yaml/apply-edits.ts'

/** A text as it is read: its problems, and the values in it. */
export interface MendReading {
  problems: readonly Problem[]
  values: unknown
}

type Read = (text: string) => MendReading

/** What became of a file. */
export interface Mended {
  text: string
  changes: Change[]
  /** What is left for its writer to decide. */
  left: readonly Problem[]
}

/** More changes than these of one file are no slips. */
const mostChanges = 200

/**
 * Write what is certain into a text, one change after another, and leave the rest. A change is kept where the text then
 * reads with fewer problems, and every other value as before; nothing but the places of the changes is touched.
 */
export function mendText(source: string, read: Read): Mended {
  let text = source
  let now = read(text)
  const changes: Change[] = []
  const failed = new Set<string>()
  for (let count = 0; count < mostChanges; count += 1) {
    const next = now.problems.find((problem) => problem.sure && !failed.has(keyOf(problem)))
    if (!next) break
    const to = applied(text, editsOf(next))
    const then = to === text ? undefined : read(to)
    if (!then || !isBetter(now, then, next) || !keepsRest(text, to, now, then)) {
      failed.add(keyOf(next))
      continue
    }
    changes.push(changeBetween(text, to))
    text = to
    now = then
  }
  return {text, changes, left: now.problems}
}

/** A text after one change, and how it then reads. */
export interface Way {
  text: string
  change: Change
  then: MendReading
}

/** The values expected that a person may choose: with each the text reads better, and all other keys as before. */
export function waysToMend(text: string, now: MendReading, problem: Problem, read: Read): Way[] {
  return (problem.expected ?? []).flatMap((_, way) => {
    const to = applied(text, editsOf(problem, way))
    const then = read(to)
    const isSound = to !== text && isBetter(now, then, problem) && keepsOtherKeys(text, to, now, then)
    return isSound ? [{text: to, change: changeBetween(text, to), then}] : []
  })
}

const keyOf = ({rule, message, expected}: Problem): string => `${rule} ${message} ${expected?.[0]}`

const gravity = {error: 1000, fault: 1000, warning: 10, remark: 0}

const weight = (problems: readonly Problem[]): number =>
  problems.reduce((sum, {severity}) => sum + gravity[severity], 0)

/** Whether a text reads better: past a slip of YAML, what was hidden behind it may come to light. */
function isBetter(before: MendReading, after: MendReading, {rule}: Problem): boolean {
  const count = ({problems}: MendReading) => problems.filter((one) => one.rule === 'unreadable-yaml').length
  if (rule === 'unreadable-yaml' && count(after) < count(before)) return true
  // Where not all problems are told, the next one takes the place of one that is mended.
  const isCut = before.problems.some((one) => one.rule === 'too-many-problems')
  if (isCut && meanings(after.values).size > meanings(before.values).size) return true
  return ofReading(after) < ofReading(before) || weight(after.problems) < weight(before.problems)
}

/** The weight of what cannot be read; a design may come to light with its faults once its values are read. */
const ofReading = ({problems}: MendReading): number =>
  weight(problems.filter((one) => one.expected || one.severity === 'error'))

/** Whether all that was read before is read as it was: at its path, or under the key that was changed. */
function keepsRest(text: string, to: string, before: MendReading, after: MendReading): boolean {
  if (!keepsOtherKeys(text, to, before, after)) return false
  const touched = touchedKeys(plainLines(text), plainLines(to))
  const ofTouched = ({values}: MendReading) =>
    [...meanings(values)].filter(([path]) => touched.has(headOf(path)))
  const moved = ofTouched(after).map(([, meaning]) => meaning)
  for (const [, meaning] of ofTouched(before)) {
    const at = moved.indexOf(meaning)
    if (at < 0) return false
    moved.splice(at, 1)
  }
  return true
}

/** Whether every value outside the keys that were changed is read as it was. */
function keepsOtherKeys(text: string, to: string, before: MendReading, after: MendReading): boolean {
  const touched = touchedKeys(plainLines(text), plainLines(to))
  const was = meanings(before.values)
  const is = meanings(after.values)
  return [...new Set([...was.keys(), ...is.keys()])].every(
    (path) => touched.has(headOf(path)) || was.get(path) === is.get(path),
  )
}

const headOf = (path: string): string => path.split('.')[0]!

const meanings = (values: unknown): Map<string, string> =>
  new Map(
    leavesOf(values).map(([path, {text: _, place: __, ...value}]) => [path, JSON.stringify(value)] as const),
  )

/** The keys of the first level on whose lines two texts differ. */
function touchedKeys(before: string, after: string): Set<string> {
  const {line, before: gone, after: come} = changeBetween(before, after)
  return new Set([
    ...keysOf(before.split('\n'), line - 1, gone.length),
    ...keysOf(after.split('\n'), line - 1, come.length),
  ])
}

function keysOf(lines: readonly string[], from: number, count: number): string[] {
  const start = lines.slice(0, from + 1).findLastIndex((line) => /^[^\s#\-\]}]/.test(line))
  const own = lines.slice(Math.max(0, start), Math.max(from + count, start + 1))
  return own.flatMap((line) => /^\s?["']?([\w-]+)["']?\s*[:=]?/.exec(line)?.[1] ?? [])
}
