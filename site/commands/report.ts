import {styleText} from 'node:util'
import type {Problem, Severity} from '../../plugins/build-file/schema/problem.ts'
import {waysToPaste} from '../../plugins/words/mends.ts'
import type {Unmade} from '../kit/page.ts'
import type {FileProblems} from '../kit/site-data.ts'

/**
 * Print problems under their files' names as `line:column severity message rule`, then a count; of files whose texts
 * are given, with the lines that would do.
 */
export function report(
  files: readonly FileProblems[],
  stream: NodeJS.WriteStream = process.stdout,
  showing?: ReadonlyMap<string, string>,
): string {
  const bad = files.filter(({problems}) => problems.length > 0)
  const blocks = bad.map(({file, problems}) =>
    [
      coloured(printable(file), 'file', stream),
      ...problems.flatMap((problem) => [
        lineOf(problem, stream),
        ...(showing?.has(file) ? linesToPaste(showing.get(file)!, problem) : []),
      ]),
      '',
    ].join('\n'),
  )
  return [...blocks, countOf(files)].join('\n')
}

/** Print the lines that would do for a problem, as they can be pasted. */
function linesToPaste(text: string, problem: Problem): string[] {
  const ways = waysToPaste(text, problem).filter((lines) => lines.length > 0)
  return ways.flatMap((lines, at) => [
    ...(at > 0 ? ['      or'] : []),
    ...lines.map((line) => printable(`      ${line}`)),
  ])
}

// Control characters, ends of lines, and marks that turn the direction of writing: U+0000-1F, 7F-9F, 2028-2E, 2066-69.
const unprintable = /[\p{Cc}\u200e\u200f\u2028-\u202e\u2066-\u2069]/gu

/** Show what a terminal would obey, or what would begin a line of its own, as its number. */
export const printable = (text: string): string =>
  text.replace(unprintable, (sign) => `\\u{${sign.codePointAt(0)!.toString(16)}}`)

function lineOf({line, column, severity, message, rule, cause}: Problem, stream: NodeJS.WriteStream): string {
  const other = cause ? ` (see ${cause.line}:${cause.column})` : ''
  return `  ${line}:${column} ${coloured(severity, severity, stream)} ${printable(message)}${other} ${rule}`
}

const plural = (count: number, one: string) => `${count} ${one}${count === 1 ? '' : 's'}`

/** Count problems by severity: `8 builds: 1 error, 2 remarks`. */
function countOf(files: readonly FileProblems[]): string {
  const all = files.flatMap(({problems}) => problems)
  const severities: Severity[] = ['error', 'fault', 'warning', 'remark']
  const counts = severities
    .map((severity) => [all.filter((problem) => problem.severity === severity).length, severity] as const)
    .filter(([count]) => count > 0)
    .map(([count, severity]) => plural(count, severity))
  return `${plural(files.length, 'file')}: ${counts.join(', ') || 'nothing to mend'}`
}

/** Whether `check` fails: an error, or a fault. */
export const fails = (files: readonly FileProblems[]): boolean =>
  files.some(({problems}) => problems.some(({severity}) => severity === 'error' || severity === 'fault'))

/** Say what of the site could not be made, a line each. */
export const reportUnmade = (unmade: readonly Unmade[]): string[] =>
  unmade.map(({address, message}) => printable(`${address} could not be made: ${message}`))

const styles = {error: 'red', fault: 'red', warning: 'yellow', remark: 'cyan', file: 'bold'} as const

/** Colour a word where the stream is a terminal that takes colour, and `NO_COLOR` is not set. */
const coloured = (text: string, as: keyof typeof styles, stream: NodeJS.WriteStream): string =>
  styleText(styles[as], text, {stream})
