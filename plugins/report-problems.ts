import type {VFile} from 'vfile'
import type {Problem} from './build-file/problem.ts'

/**
 * Report problems as messages of the file: errors and faults as fatal, warnings as such, remarks as information.
 * Nothing is thrown. Each has its place, its rule, the page that explains it, and what would do.
 */
export function reportProblems(file: VFile, problems: readonly Problem[]): void {
  for (const problem of problems) {
    const {rule, severity, message, expected, note, cause} = problem
    const place = {
      start: {line: problem.line, column: problem.column},
      end: {line: problem.endLine, column: problem.endColumn},
    }
    const report = file.message(message, {place, ruleId: rule, source: 'nut-to-bridge'})
    report.fatal = severity === 'remark' ? undefined : severity !== 'warning'
    report.url = `/rules/#${rule}`
    if (expected) report.expected = expected
    if (note) report.note = note
    if (cause) report.cause = new Error(`it disagrees with line ${cause.line}, column ${cause.column}`)
  }
}
