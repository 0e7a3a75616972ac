import {inOrder} from '../build-file/read.ts'
import type {Build} from '../build-file/schema/build.ts'
import {ownAt, placeOf} from '../build-file/schema/path.ts'
import type {Problem} from '../build-file/schema/problem.ts'
import {isMade} from '../build-file/schema/schema.ts'
import {addingKey} from '../build-file/writing/add-key.ts'
import type {Settled} from '../plan/kit/settled.ts'
import type {Plan} from '../plan/plan.ts'
import {settle} from '../plan/settle.ts'
import type {Wording} from '../words/findings/wording.ts'
import {type RuleName, rules} from './all.ts'
import type {Found, Rule} from './rule.ts'

type Finding = Found & Wording

/**
 * Find what would not work, by every rule, each problem at the place of the value to change.
 * An instrument that is strung up exists and plays: faults and warnings of its design are remarks.
 * A rule that the build accepts is a remark that prints the reason.
 */
export function checks(build: Build | Settled, plan: Plan): Problem<RuleName>[] {
  const settled = settle(build)
  return inOrder(
    rules.flatMap((rule) => {
      const found = rule.find?.(settled, plan) ?? []
      const problems = found
        .slice(0, mostOfARule)
        .map((one) => problemOf(worded(one, rule, plan), rule, settled, plan))
      const [last, more] = [problems.at(-1), found.length - problems.length]
      return last && more > 0
        ? problems.with(-1, {...last, message: `${last.message} (and ${more} more like this, not told)`})
        : problems
    }),
  )
}

/** More problems than this by one rule are one slip made again and again. */
const mostOfARule = 50

/** Find what one rule finds, as the paths of values; nothing is softened or accepted. */
export function findings(name: RuleName, build: Build | Settled, plan: Plan): Finding[] {
  const rule = rules.find((rule) => rule.name === name)
  return (rule?.find?.(settle(build), plan) ?? []).map((found) => worded(found, rule!, plan))
}

function worded(found: Found, {says}: Rule, plan: Plan): Finding {
  const {at, cause, severity, sure} = found
  return {at, cause, severity, sure, ...says!(found, plan)}
}

/** What would do, with the lines to paste where the file does not have the key. */
function wouldDo({at, expected}: Finding, build: Settled): Pick<Problem, 'expected' | 'edits'> {
  if (!expected?.length) return {}
  if (typeof at !== 'string' || ownAt(build.places, at)) return {expected}
  const edits = expected.map((text) => addingKey(build, at, text))
  return edits.every((edit) => edit !== undefined) ? {expected, edits: edits.map((edit) => [edit])} : {}
}

function problemOf(
  finding: Finding,
  {name, severity, about}: Rule & {name: RuleName},
  build: Settled,
  plan: Plan,
): Problem<RuleName> {
  const cause = finding.cause ? placeOf(build, finding.cause) : undefined
  const found = finding.severity ?? severity
  const reason = found === 'error' ? undefined : ownAt(build.values.accept, name)
  const isSoftened = about === undefined && isMade(plan.status) && (found === 'fault' || found === 'warning')
  return {
    rule: name,
    severity: reason || isSoftened ? 'remark' : found,
    ...(typeof finding.at === 'string' ? placeOf(build, finding.at) : finding.at),
    message: reason ? `${finding.message} (accepted: ${reason.value})` : finding.message,
    ...wouldDo(finding, build),
    ...(finding.sure && !reason ? {sure: true as const} : {}),
    ...(finding.note ? {note: finding.note} : {}),
    ...(cause ? {cause: {line: cause.line, column: cause.column}} : {}),
  }
}
