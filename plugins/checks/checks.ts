import type {Build} from '../build-file/build.ts'
import {placeOf} from '../build-file/path.ts'
import type {Problem} from '../build-file/problem.ts'
import {inOrder} from '../build-file/read.ts'
import type {Plan} from '../plan/shape/plan.ts'
import {type RuleRow, rules} from '../tables/rules.ts'
import {allChecks} from './all.ts'
import type {Check, Finding} from './rule.ts'

const exists = new Set(['strung up', 'retired', 'sold', 'given'])

/**
 * Find what would not work, by every rule, each problem at the place of the value to change.
 * An instrument that is strung up exists and plays: faults and warnings of its design are remarks.
 * A rule that the build accepts is a remark that prints the reason.
 */
export function checks(build: Build, plan: Plan): Problem[] {
  return inOrder(
    allChecks.flatMap((check) =>
      check.find(build, plan).map((finding) => problemOf(finding, check, build, plan)),
    ),
  )
}

function problemOf(finding: Finding, check: Check, build: Build, plan: Plan): Problem {
  const row: RuleRow = rules[check.rule]
  const cause = finding.cause ? placeOf(build, finding.cause) : undefined
  const found = finding.severity ?? row.severity
  const reason = found === 'error' ? undefined : build.values.accept?.[check.rule]
  const isSoftened =
    row.about === undefined && exists.has(plan.status ?? '') && (found === 'fault' || found === 'warning')
  return {
    rule: check.rule,
    severity: reason || isSoftened ? 'remark' : found,
    ...(typeof finding.at === 'string' ? placeOf(build, finding.at) : finding.at),
    message: reason ? `${finding.message} (accepted: ${reason.value})` : finding.message,
    ...(finding.expected?.length ? {expected: finding.expected} : {}),
    ...(finding.note ? {note: finding.note} : {}),
    ...(cause ? {cause: {line: cause.line, column: cause.column}} : {}),
  }
}
