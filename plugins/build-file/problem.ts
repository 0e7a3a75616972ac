import type {RuleName} from '../tables/rules.ts'

export type Severity = 'error' | 'fault' | 'warning' | 'remark'

/**
 * Something found in a build, as data; wording comes last.
 * `message` says what was found and what would do; `expected` lists values that would do, as a maker writes
 * them; `note` explains at length; `cause` is where the value stands that this one disagrees with.
 */
export interface Problem {
  rule: RuleName
  severity: Severity
  line: number
  column: number
  endLine: number
  endColumn: number
  message: string
  expected?: string[]
  note?: string
  cause?: {line: number; column: number}
}
