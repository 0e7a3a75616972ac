/** A stretch of a build's file. Lines and columns count from 1; the end is exclusive. */
export interface Place {
  line: number
  column: number
  endLine: number
  endColumn: number
}

/** The place of a problem that concerns the whole file. */
export const wholeFile: Place = {
  line: 1,
  column: 1,
  endLine: 1,
  endColumn: 1,
}

export type Severity = 'error' | 'fault' | 'warning' | 'remark'

/** A text that takes the place of a stretch of the file. */
export interface Edit extends Place {
  text: string
}

/**
 * Something found in a build, as data; wording comes last.
 * `message` says what was found and what would do; `expected` lists what would do, as a maker writes it, each of
 * which can stand in the file where the problem's place is; `note` explains at length; `cause` is where the value
 * stands that this one disagrees with.
 */
export interface Problem<Rule extends string = string> {
  rule: Rule
  severity: Severity
  line: number
  column: number
  endLine: number
  endColumn: number
  message: string
  expected?: string[] | undefined
  /** There is one reading only: the first value expected may be written without asking. */
  sure?: true | undefined
  /** What changes with each value expected, where more than the place does. */
  edits?: Edit[][] | undefined
  note?: string | undefined
  cause?: {line: number; column: number} | undefined
}
