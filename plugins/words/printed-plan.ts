import type {Problem} from '../build-file/problem.ts'
import type {Plan} from '../plan/plan.ts'

/** The plan as it is given to others: with a text wherever its contract promises one. */
export type PrintedPlan = Plan

/** Word the plan for those who read it as data; what is undefined is dropped. */
export function printedPlan(plan: Plan): PrintedPlan {
  return defined(plan)
}

/** Write the plan and what the checks found in it as one JSON object, ended by a line feed. */
export function planJson(plan: Plan, problems: readonly Problem[]): string {
  return `${JSON.stringify({...printedPlan(plan), problems}, null, 2)}\n`
}

/** Copy a value without the keys of objects that hold undefined. */
function defined<Value>(value: Value): Value {
  if (Array.isArray(value)) return value.map(defined) as Value
  if (typeof value !== 'object' || value === null) return value
  const kept = Object.entries(value).flatMap(([key, held]) =>
    held === undefined ? [] : [[key, defined(held)] as const],
  )
  return Object.fromEntries(kept) as Value
}
