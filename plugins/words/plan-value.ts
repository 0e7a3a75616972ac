import {nearest} from '../build-file/schema/nearest.ts'
import {valueAt} from '../build-file/schema/path.ts'
import type {Settled} from '../plan/kit/settled.ts'
import {planValues} from '../tables/plan-values.ts'
import {valueNeeds} from '../tables/value-needs.ts'
import type {PrintedPlan} from './printed-plan.ts'

/**
 * What stands at a path of the plan: a value; `open`, known and not computed yet (`pattern` is its name with `*`);
 * or nothing that is known, with the names that were perhaps meant.
 */
export type FoundValue =
  | {is: 'value'; key: string; value: number | string | boolean}
  | {is: 'open'; pattern: string}
  | {is: 'unknown'; likely: () => string[]}

// A name carries its unit last; where only one unit is meant it may be left off.
const unitEndings = ['', 'Mm', 'N', 'Deg', 'Hz', 'Cents', 'Kg', 'Mpa', 'Mm2', 'Nmm2', 'KgM', 'L', 'H']
const unitEnding = new RegExp(`(?<=[a-z])(?:${unitEndings.filter(Boolean).join('|')})$`)

/**
 * Find a value of the plan by its path: strings by note, lines by label, everything else that is one of several by
 * its name or by its number, from 1. `scale.lines.12.fromNut`, `strings.D4.tension`.
 */
export function planValue(plan: PrintedPlan, path: string): FoundValue {
  const steps = path.trim().split('.')
  let at: unknown = plan
  let key = ''
  for (const step of steps) {
    const there = Object.entries(Object(at)).filter(([, value]) => value !== undefined)
    const names = Array.isArray(at) ? itemNames(at, plan) : there.map(([name]) => name)
    const found = Array.isArray(at)
      ? step
      : unitEndings.map((ending) => step + ending).find((name) => names.includes(name))
    const index = names.indexOf(found ?? '')
    if (index < 0) return missing(steps, Array.isArray(at) ? {step, names} : undefined)
    if (!Array.isArray(at)) key = found ?? ''
    at = there[index]?.[1]
  }
  if (typeof at === 'number' || typeof at === 'string' || typeof at === 'boolean')
    return {is: 'value', key, value: at}
  return {is: 'unknown', likely: () => below(steps)}
}

/** Name the items of a list: by name, label or id; numbers of one string each by the string; else from 1. */
function itemNames(list: readonly unknown[], plan: PrintedPlan): string[] {
  const strings = plan.strings ?? []
  const perString = list.length === strings.length && list.every((item) => typeof item === 'number')
  return list.map((item, at) => {
    const {name, label, id} = Object(item) as {name?: string; label?: string; id?: string}
    return (perString ? strings[at]?.name : undefined) ?? name ?? label ?? id ?? String(at + 1)
  })
}

/** The known names by their steps, and the words of their last. */
const known = planValues.map((name) => {
  const parts = name.split('.')
  return {name, parts, words: wordsOf(parts.at(-1)!)}
})

/** List the words of a name's step, in lower case, its unit left off: `tension`, `total` of `tensionTotalN`. */
function wordsOf(step: string): string[] {
  return step
    .replace(unitEnding, '')
    .split(/(?=[A-Z])/)
    .map((word) => word.toLowerCase())
}

function missing(steps: string[], list?: List): FoundValue {
  const pattern = known.find(({parts}) => fits(parts, steps))?.name
  if (pattern && !list) return {is: 'open', pattern}
  // Of many that are unknown a few are told, and a name that was perhaps meant is looked for far longer than it is used.
  return {is: 'unknown', likely: () => (pattern && list ? listed(steps, list) : meant(steps, list))}
}

interface List {
  step: string
  names: string[]
}

const listed = (steps: string[], {step, names}: List): string[] =>
  names.slice(0, 8).map((name) => steps.with(steps.indexOf(step), name).join('.'))

function meant(steps: string[], list: List | undefined): string[] {
  const item = list?.names[0]
  const there = item === undefined ? steps : steps.with(steps.indexOf(list!.step), item)
  const inside = below(there)
  if (inside.length > 0) return [...new Set([...alike(steps), ...inside])].slice(0, 4)
  const likely = nearest(
    steps.join('.'),
    known.map(({parts}) => fill(parts, steps)),
  )
  const near = likely ? [likely] : []
  const isBeside = likely?.startsWith(`${steps.slice(0, -1).join('.')}.`)
  const names = isBeside ? [...alike(steps), ...near] : [...beside(steps), ...alike(steps), ...near]
  return [...new Set(names)].slice(0, 4)
}

/** List two values in the same unit of the same one of several, such as a line. */
function beside(steps: readonly string[]): string[] {
  const unitOf = (step: string) => unitEnding.exec(step)?.[0]
  const unit = unitOf(steps.at(-1)!)
  if (!unit) return []
  return below(
    steps.slice(0, -1),
    ({name, parts}) => name.includes('*') && parts.length === steps.length && unitOf(parts.at(-1)!) === unit,
  ).slice(0, 2)
}

/** List the known names whose last step, or else any, has a word of this one's last; those first that share most. */
function alike(steps: readonly string[]): string[] {
  const last = new Set(wordsOf(steps.at(-1)!))
  const all = new Set(steps.flatMap(wordsOf))
  const shared = (words: readonly string[]) => words.filter((word) => all.has(word)).length
  const isAlike = (words: readonly string[]) => words.some((word) => last.has(word))
  const single = known.filter(({name}) => !name.includes('*') && !name.startsWith('tooMany'))
  const byLast = single.filter(({words}) => isAlike(words))
  const found = byLast.length > 0 ? byLast : single.filter(({parts}) => isAlike(parts.flatMap(wordsOf)))
  return found
    .map(({name, parts}) => ({name, count: shared(parts.flatMap(wordsOf))}))
    .sort((a, b) => b.count - a.count)
    .filter(({count}, _, [best]) => count === best!.count)
    .map(({name}) => name)
}

function fits(parts: readonly string[], steps: readonly string[]): boolean {
  return parts.length === steps.length && parts.every((part, at) => part === '*' || endsAs(part, steps[at]!))
}

function endsAs(part: string, step: string): boolean {
  return unitEndings.some((ending) => part === step + ending)
}

/** Put the steps as written where a known name has a `*`. */
function fill(parts: readonly string[], steps: readonly string[]): string {
  return parts.map((part, at) => (part === '*' ? (steps[at] ?? '1') : part)).join('.')
}

/** List some of the values that lie below a path which names a group of them. */
function below(
  steps: readonly string[],
  isMeant: (one: (typeof known)[number]) => boolean = () => true,
): string[] {
  return known
    .filter(
      (one) =>
        one.parts.length > steps.length && fits(one.parts.slice(0, steps.length), steps) && isMeant(one),
    )
    .slice(0, 4)
    .map(({parts}) => fill(parts, steps))
}

/**
 * Name the keys of the build file that a value of the plan (by its name with `*`) still needs; where a string has
 * what the others lack, that string's own. Empty where nothing more can be named.
 */
export function keysMissingFor(pattern: string, build: Settled): string[] {
  const [, keys = []] =
    valueNeeds
      .filter(([start]) => pattern.startsWith(start))
      .sort(([a], [b]) => b.length - a.length)
      .at(0) ?? []
  const missing = keys.filter((key) => !isGiven(build, key))
  // Either a single wood or laminations will do.
  const woods = ['neck.wood', 'neck.laminations']
  const still = woods.some((key) => isGiven(build, key))
    ? missing.filter((key) => !woods.includes(key))
    : missing
  if (still.length > 0 || !pattern.startsWith('strings.*.')) return still
  const at = (build.values.strings ?? []).findIndex((string) => !string.note || !string.gauge)
  if (at < 0) return []
  return [`strings.${at + 1}.${build.values.strings?.[at]?.note ? 'gauge' : 'note'}`]
}

const isGiven = ({values}: Settled, path: string): boolean => valueAt(values, path) !== undefined
