import type {Document, Node} from 'yaml'
import type {RuleName} from '../tables/rules.ts'
import {rules} from '../tables/rules.ts'
import type {Place} from './place.ts'
import type {Problem} from './problem.ts'

/** What the reader of values carries along: units, places found so far, and where problems go. */
export interface ReadingContext {
  doc: Document.Parsed
  units: 'in' | 'mm'
  placeOf: (node: Node | null | undefined, from?: number, to?: number) => Place
  places: Record<string, Place>
  keys: Record<string, Place>
  problems: Problem[]
}

/** Report a problem of a rule, with the rule's own severity. */
export function report(
  context: ReadingContext,
  rule: RuleName,
  place: Place,
  message: string,
  more: {expected?: string[] | undefined; cause?: Place | undefined; note?: string} = {},
): void {
  context.problems.push({
    rule,
    severity: rules[rule].severity,
    ...place,
    message,
    ...(more.expected?.length ? {expected: more.expected} : {}),
    ...(more.note ? {note: more.note} : {}),
    ...(more.cause ? {cause: {line: more.cause.line, column: more.cause.column}} : {}),
  })
}
