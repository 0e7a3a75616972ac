import {type HazardRow, hazards} from '../tables/hazards.ts'
import {waitSource} from '../tables/waits.ts'
import {workKinds} from '../tables/work-kinds.ts'
import type {PlanPart} from './part.ts'
import type {Step} from './shape/work.ts'
import {bareBoxSteps, boxSteps} from './work/box-steps.ts'
import {doneSteps} from './work/done-steps.ts'
import {faceSteps} from './work/face-steps.ts'
import {finishSteps} from './work/finish-steps.ts'
import {headSteps} from './work/head-steps.ts'
import {inOrder, type PlacedStep} from './work/in-order.ts'
import {joiningSteps} from './work/joining-steps.ts'
import {lineSteps} from './work/line-steps.ts'
import type {WorkGroup} from './work/step-draft.ts'
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
  const {told = [], minutes, values} = settled
  const done = doneSteps(steps, {told, status: values.status?.value, isMeasured: Boolean(values.measured)})
  const beside = cautionsBeside(soFar.cautions ?? [])
  const work = steps.map((placed, at) => stepOf(placed, meanwhile(steps, at), beside, done))
  const time = workTime(work, minutes)
  return {work, ...(time && {workTime: time})}
}

function stepOf(
  {draft, after}: PlacedStep,
  others: string[],
  beside: ReadonlyMap<string, string[]>,
  done: ReadonlySet<string>,
): Step {
  const {id, kind, does, tool, setting, waitH, check} = draft
  const step: Step = {
    id,
    kind,
    step: draft.step ?? workKinds[kind].name,
    does,
    tool,
    stations: draft.stations ?? [],
    after,
    cautions: beside.get(kind) ?? [],
    isDone: done.has(id),
  }
  if (setting) step.setting = setting
  if (waitH !== undefined) {
    step.waitH = waitH
    step.waitFrom = waitSource
  }
  if (others.length > 0) step.meanwhile = others
  if (check) step.check = check
  return step
}

/** Gather the cautions of this build by the kind of step that each belongs beside, the worst first. */
function cautionsBeside(cautions: readonly {id: string}[]): ReadonlyMap<string, string[]> {
  const rows: Readonly<Record<string, HazardRow>> = hazards
  const beside = new Map<string, string[]>()
  for (const {id} of cautions)
    for (const kind of rows[id]?.steps ?? []) {
      const those = beside.get(kind)
      if (those) those.push(id)
      else beside.set(kind, [id])
    }
  return beside
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
