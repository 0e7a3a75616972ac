import type {FileExample, RuleText} from '../build-file/rules/rule-text.ts'
import type {Place, Severity} from '../build-file/schema/problem.ts'
import type {ConflictKind} from '../plan/kit/conflicts.ts'
import type {Settled} from '../plan/kit/settled.ts'
import type {Plan} from '../plan/plan.ts'
import type {Wording} from '../words/findings/wording.ts'

/** Where a check found something; the frame turns paths of the build file into places. */
export interface Found {
  /** Path of the value to change, lists from 1: `strings.2.gauge`; or, in the body, the place itself. */
  at: string | Place
  /** Path of the value that this one disagrees with. */
  cause?: string | undefined
  /** Where it differs from the rule's usual one. */
  severity?: Severity | undefined
  /** There is one reading only of what was written. */
  sure?: boolean | undefined
}

/** A rule of the checks: it asks the plan and computes nothing; the words room words the facts that it finds. */
interface Check<Facts> extends RuleText {
  passes: FileExample
  fails: FileExample
  find(build: Settled, plan: Plan): (Found & Facts)[]
  says(facts: Facts, plan: Plan): Wording
}

/** Any rule; `find` is absent where what it finds is found before there is a build. */
export type Rule = RuleText & Partial<Pick<Check<object>, 'find' | 'says'>>

/** Hold the facts that a rule finds to those that are worded. */
export const rule = <Facts extends object>(check: Check<Facts>): Rule => check as Rule

/** List what the plan has that is too near something, of one kind, each at the value to change. */
export const tooNear = ({conflicts = []}: Plan, kind: ConflictKind) =>
  conflicts
    .filter((conflict) => conflict.kind === kind)
    .map((conflict) => ({at: conflict.wouldDo?.path ?? conflict.of, cause: conflict.to, conflict}))
