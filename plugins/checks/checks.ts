import type {Build} from '../build-file/build.ts'
import {placeOf} from '../build-file/path.ts'
import type {Problem} from '../build-file/problem.ts'
import {inOrder} from '../build-file/read.ts'
import type {Plan} from '../plan/plan.ts'
import {type Settled, settle} from '../plan/settle.ts'
import type {Wording} from '../words/findings/wording.ts'
import {type RuleName, rules} from './all.ts'
import type {Found, Rule} from './rule.ts'

type Finding = Found & Wording

const exists = new Set(['strung up', 'retired', 'sold', 'given'])

/**
 * Find what would not work, by every rule, each problem at the place of the value to change.
 * An instrument that is strung up exists and plays: faults and warnings of its design are remarks.
 * A rule that the build accepts is a remark that prints the reason.
 */
export function checks(build: Build | Settled, plan: Plan): Problem<RuleName>[] {
  const settled = settle(build)
  return inOrder(
    rules.flatMap((rule) =>
      findings(rule.name, settled, plan).map((finding) => problemOf(finding, rule, settled, plan)),
    ),
  )
}

/** Find what one rule finds, as the paths of values; nothing is softened or accepted. */
export function findings(name: RuleName, build: Build | Settled, plan: Plan): Finding[] {
  const rule = rules.find((rule) => rule.name === name)
  return (rule?.find?.(settle(build), plan) ?? []).map((found) => {
    const {at, cause, severity} = found
    return {at, cause, severity, ...rule!.says!(found, plan)}
  })
}

function problemOf(
  finding: Finding,
  {name, severity, about}: Rule & {name: RuleName},
  build: Settled,
  plan: Plan,
): Problem<RuleName> {
  const cause = finding.cause ? placeOf(build, finding.cause) : undefined
  const found = finding.severity ?? severity
  const reason = found === 'error' ? undefined : build.values.accept?.[name]
  const isSoftened =
    about === undefined && exists.has(plan.status ?? '') && (found === 'fault' || found === 'warning')
  return {
    rule: name,
    severity: reason || isSoftened ? 'remark' : found,
    ...(typeof finding.at === 'string' ? placeOf(build, finding.at) : finding.at),
    message: reason ? `${finding.message} (accepted: ${reason.value})` : finding.message,
    ...(finding.expected?.length ? {expected: finding.expected} : {}),
    ...(finding.note ? {note: finding.note} : {}),
    ...(cause ? {cause: {line: cause.line, column: cause.column}} : {}),
  }
}
