import type {Problem} from '../../plugins/build-file/problem.ts'

/** A fault of this program is told as a problem of the file that it fails on, so that every other file goes on. */
export function programFails(step: string, error: unknown): Problem {
  const message = `this program fails to ${step} the file, which is its own fault: ${(error as Error).message}`
  return {rule: 'program-fails', severity: 'error', line: 1, column: 1, endLine: 1, endColumn: 1, message}
}
