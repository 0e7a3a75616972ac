import type {Build} from '../build-file/build.ts'
import type {Place, Severity} from '../build-file/problem.ts'
import type {RuleText} from '../build-file/rules.ts'
import type {Plan} from '../plan/plan.ts'

/** What a check found, by paths of the build file; the frame turns paths into places. */
export interface Finding {
  /** Path of the value to change, lists from 1: `strings.2.gauge`; or, in the body, the place itself. */
  at: string | Place
  /** What was found and what would do, in a maker's words. */
  message: string
  /** Values that would do, as a maker writes them; putting the first one at `at` mends it. */
  expected?: string[]
  note?: string
  /** Path of the value that this one disagrees with. */
  cause?: string
  /** Where it differs from the rule's usual one. */
  severity?: Severity
}

/** A rule: it asks the plan and words what it finds; it computes nothing. */
export interface Rule extends RuleText {
  /** Absent where what it finds is found before there is a build. */
  find?: (build: Build, plan: Plan) => Finding[]
}

/** Check the shape of a rule where it is written. */
export const rule = (rule: Rule): Rule => rule
