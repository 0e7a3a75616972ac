import {type HazardRow, hazards} from '../tables/hazards.ts'
import {waitSource} from '../tables/waits.ts'
import {workKinds} from '../tables/work-kinds.ts'
import type {PlanPart} from './part.ts'
import type {Step} from './shape/work.ts'
import {allBefore} from './work/all-before.ts'
import {bareBoxSteps, boxSteps} from './work/box-steps.ts'
import {doneSteps} from './work/done-steps.ts'
import {faceSteps} from './work/face-steps.ts'
import {finishSteps} from './work/finish-steps.ts'
import {headSteps} from './work/head-steps.ts'
import {inOrder} from './work/in-order.ts'
import {joiningSteps} from './work/joining-steps.ts'
import {lineSteps} from './work/line-steps.ts'
import type {StepDraft, WorkGroup} from './work/step-draft.ts'
import {stockSteps} from './work/stock-steps.ts'
import {workFacts} from './work/work-facts.ts'
import {workTime} from './work/work-time.ts'

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
 * hours to wait, what comes before it, its cautions and a check; and how long all waits take. Absent while there is
 * nothing to work on.
 */
export const workOrder: PlanPart = (settled, soFar) => {
  const facts = workFacts(settled, soFar)
  const steps = inOrder(groups.flatMap((group) => group(facts)))
  if (steps.length === 0) return {}
  const before = allBefore(steps)
  const {told = [], minutes, values} = settled
  const done = doneSteps(steps, before, {
    told,
    status: values.status?.value,
    isMeasured: Boolean(values.measured),
  })
  const beside = cautionsBeside((soFar.cautions ?? []).map(({id}) => id))
  const work = steps.map((draft, at) => stepOf(draft, beside, meanwhile(steps, before, at), done))
  const time = workTime(work, minutes)
  return {work, ...(time && {workTime: time})}
}

function stepOf(
  draft: StepDraft,
  beside: ReadonlyMap<string, string[]>,
  others: string[],
  done: Set<string>,
): Step {
  const {id, kind, step, does, tool, setting, stations = [], waitH, after, check} = draft
  return {
    id,
    kind,
    step: step ?? workKinds[kind].name,
    does,
    tool,
    ...(setting && {setting}),
    stations,
    ...(waitH !== undefined && {waitH, waitFrom: waitSource}),
    ...(others.length > 0 && {meanwhile: others}),
    after: [...after],
    cautions: [...(beside.get(kind) ?? [])],
    ...(check && {check}),
    isDone: done.has(id),
  }
}

/** Gather the cautions of this build by the kind of step that each belongs beside, the worst first. */
function cautionsBeside(ids: readonly string[]): ReadonlyMap<string, string[]> {
  const rows: Readonly<Record<string, HazardRow>> = hazards
  const beside = new Map<string, string[]>()
  for (const id of ids)
    for (const kind of rows[id]?.steps ?? []) {
      const those = beside.get(kind)
      if (those) those.push(id)
      else beside.set(kind, [id])
    }
  return beside
}

/** Name what can be done while a step's glue or finish dries: later steps that do not come after it. */
function meanwhile(
  steps: readonly StepDraft[],
  before: ReadonlyMap<string, ReadonlySet<string>>,
  at: number,
): string[] {
  const {id, waitH} = steps[at]!
  if (!waitH) return []
  return steps
    .slice(at + 1)
    .filter((other) => !before.get(other.id)!.has(id))
    .slice(0, mostMeanwhile)
    .map((other) => other.id)
}
