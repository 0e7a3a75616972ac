import {h} from 'hastscript'
import {type Problem, wholeFile} from '../../plugins/build-file/schema/problem.ts'
import type {RuleName} from '../../plugins/checks/all.ts'
import {markup} from '../kit/markup.ts'

/** Told of what this program fails at, such as `show the drawing of` a file. */
export type Failed = (step: string, error: unknown) => void

/** A fault of this program is told as a problem of the file that it fails on, so that every other file goes on. */
export function programFails(step: string, error: unknown): Problem<RuleName> {
  const why = error instanceof Error ? error.message : String(error)
  const message = `this program fails to ${step} the file, which is its own fault: ${why}`
  return {rule: 'program-fails', severity: 'fault', ...wholeFile, message}
}

/** Make something of a file; undefined, and told, where this program fails. */
export function tried<T>(step: string, make: () => T, failed: Failed): T | undefined {
  try {
    return make()
  } catch (error) {
    failed(step, error)
    return undefined
  }
}

/** Show a build file's prose as it was written, where it cannot be set. */
export function proseAsWritten(text: string): string {
  const prose = text.replace(/^---\r?\n.*?\n---[ \t]*(?:\r?\n|$)/s, '')
  const told =
    'This program fails to show this build as it should, which is its own fault. The text as it was written:'
  return markup(h('section', [h('p', told), h('pre', prose)]))
}
