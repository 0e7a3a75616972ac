import type {Problem, Severity} from '../../plugins/build-file/problem.ts'

/** The problems of one file. */
export interface FileProblems {
  file: string
  problems: readonly Problem[]
}

/** Print problems under their files' names as `line:column severity message rule`, then a count. */
export function report(files: readonly FileProblems[], stream: NodeJS.WriteStream = process.stdout): string {
  const bad = files.filter(({problems}) => problems.length > 0)
  const blocks = bad.map(({file, problems}) =>
    [colour(file, 'bold', stream), ...problems.map((problem) => lineOf(problem, stream)), ''].join('\n'),
  )
  return [...blocks, countOf(files)].join('\n')
}

function lineOf({line, column, severity, message, rule, cause}: Problem, stream: NodeJS.WriteStream): string {
  const other = cause ? ` (see ${cause.line}:${cause.column})` : ''
  return `  ${line}:${column} ${colour(severity, severity, stream)} ${message}${other} ${rule}`
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

const codes: Record<Severity | 'bold', string> = {
  error: '31',
  fault: '31',
  warning: '33',
  remark: '36',
  bold: '1',
}

/** Colour a word on a terminal that takes colour; elsewhere, or under `NO_COLOR`, leave it as it is. */
function colour(text: string, as: Severity | 'bold', stream: NodeJS.WriteStream = process.stdout): string {
  return stream.isTTY && !process.env.NO_COLOR ? `\u001b[${codes[as]}m${text}\u001b[0m` : text
}
