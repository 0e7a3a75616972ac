import {isMade} from '../../build-file/schema/schema.ts'
import {namesOf} from '../../tables/work-kinds.ts'
import type {Caution} from '../cautions/cautions.ts'
import type {Settled} from '../kit/settled.ts'
import {bareBoxSteps, boxSteps} from './box-steps.ts'
import {cautionsBeside} from './cautions-beside.ts'
import {faceSteps} from './face-steps.ts'
import {finishSteps} from './finish-steps.ts'
import {headSteps} from './head-steps.ts'
import {inOrder, type PlacedStep} from './in-order.ts'
import {joiningSteps} from './joining-steps.ts'
import {lineSteps} from './line-steps.ts'
import {type Step, type StepDraft, stepCalled} from './step.ts'
import {stockSteps} from './stock-steps.ts'
import {type Design, told, type WorkGroup, workFacts} from './work-facts.ts'

/** How long the waits take, in hours. */
export interface WorkTime {
  /** The longest chain of waits: what cannot be had sooner. */
  waitH: number
  /** All waits, one after the other. */
  waitsH: number
  /** What the days of the journal add up to. */
  benchH?: number | undefined
}

const groups: readonly WorkGroup[] = [
  bareBoxSteps,
  stockSteps,
  headSteps,
  faceSteps,
  lineSteps,
  boxSteps,
  finishSteps,
  joiningSteps,
]
const mostMeanwhile = 3

/**
 * List the steps of this design in an order that works, each with tool, setting, stations (mm from the nut line),
 * hours to wait, what comes before it, its cautions and a check; and how long all waits take. Undefined while there is
 * nothing to work on.
 */
export function planWork(
  settled: Settled,
  design: Design,
  cautions: readonly Caution[] | undefined,
): {work: Step[]; workTime: WorkTime | undefined} | undefined {
  const facts = workFacts(settled, design)
  const steps = inOrder(groups.flatMap((group) => group(facts)))
  if (steps.length === 0) return undefined
  const {told: texts = [], minutes, values} = settled
  const done = doneSteps(steps, {
    told: texts,
    named: (settled.steps ?? []).map(({name}) => name),
    status: values.status?.value,
    isMeasured: Boolean(values.measured),
  })
  const beside = cautionsBeside(cautions ?? [], facts)
  const work = steps.map((placed, at) => stepOf(placed, meanwhile(steps, at), beside, done))
  return {work, workTime: workTime(work, minutes)}
}

function stepOf(
  {draft, after}: PlacedStep,
  others: string[],
  beside: (step: StepDraft) => string[],
  done: ReadonlySet<string>,
): Step {
  const {id, kind, facts, tool, parts, waitH} = draft
  return {
    id,
    kind,
    facts,
    tool,
    stations: draft.stations ?? [],
    parts: parts?.length ? parts : undefined,
    waitH,
    meanwhile: others.length > 0 ? others : undefined,
    after,
    cautions: beside(draft),
    isDone: done.has(id),
  }
}

/** Name what can be done while a step's glue or finish dries: later steps that do not come after it. */
function meanwhile(steps: readonly PlacedStep[], at: number): string[] {
  const {id, waitH} = steps[at]!.draft
  const found: string[] = []
  if (!waitH) return found
  const waiting = new Set([id])
  for (const {draft, after} of steps.slice(at + 1)) {
    if (found.length === mostMeanwhile) break
    if (after.some((before) => waiting.has(before))) waiting.add(draft.id)
    else found.push(draft.id)
  }
  return found
}

/**
 * Find the steps that are done: those that a day's heading, a ticked task or `:step[...]` names, the stringing of a build that is
 * strung up (its setting up too, where it was measured), and all that must have come before any of these. The steps
 * are in an order that works.
 */
function doneSteps(
  steps: readonly PlacedStep[],
  {
    told: texts,
    named,
    status,
    isMeasured,
  }: {
    told: readonly string[]
    named: readonly string[]
    status: string | undefined
    isMeasured: boolean
  },
): ReadonlySet<string> {
  const isNamed = told(texts)
  const isStrung = isMade(status)
  const drafts = steps.map(({draft}) => draft)
  const called = new Set(named.map((name) => stepCalled(name, drafts)?.id))
  const done = new Set<string>()
  for (let at = steps.length - 1; at >= 0; at--) {
    const {draft, after} = steps[at]!
    const {id, kind, words = namesOf(id, kind).words} = draft
    const isStrungSo = isStrung && (kind === 'string' || (isMeasured && kind === 'set-up'))
    if (!done.has(id) && !isStrungSo && !called.has(id) && !isNamed(words)) continue
    done.add(id)
    for (const before of after) done.add(before)
  }
  return done
}

/**
 * Add up the waits (h): the longest chain of those that depend on each other, which no order shortens, and all of
 * them; beside them the hours that the journal tells of. Undefined where nothing waits and nothing is told.
 */
function workTime(steps: readonly Step[], minutes = 0): WorkTime | undefined {
  const until = new Map<string, number>()
  let waitH = 0
  let waitsH = 0
  for (const {id, after, waitH: own = 0} of steps) {
    let fromH = 0
    for (const before of after) fromH = Math.max(fromH, until.get(before) ?? 0)
    until.set(id, fromH + own)
    waitH = Math.max(waitH, fromH + own)
    waitsH += own
  }
  if (waitsH === 0 && minutes === 0) return undefined
  return {waitH, waitsH, benchH: minutes > 0 ? minutes / 60 : undefined}
}
