import {applied, type Change, changeBetween, editsOf} from '../build-file/heal/apply.ts'
import type {Problem} from '../build-file/problem.ts'

/** Show a change as its lines before and after: `3  - scale: 24 inn`, then `   + scale: 24 in`. */
export function changeInWords({line, before, after}: Change): string[] {
  const number = String(line)
  const gap = ' '.repeat(number.length)
  return [...before.map((each) => `- ${each}`), ...after.map((each) => `+ ${each}`)].map(
    (each, at) => `  ${at === 0 ? number : gap}  ${each}`,
  )
}

/** The lines that would do for a problem, each way as a person would paste it; lines left out are no way to paste. */
export function waysToPaste(text: string, problem: Problem): string[][] {
  return (problem.expected ?? []).map(
    (_, way) => changeBetween(text, applied(text, editsOf(problem, way))).after,
  )
}

const plural = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`

/** Ask which of some ways is to be written. */
export const askedInWords = (ways: number): string =>
  ways === 1
    ? 'Write it? y, or nothing to leave it'
    : `Which one? ${Array.from({length: ways}, (_, at) => at + 1).join(', ')}, or nothing to leave it`

/** Say how many changes were written to a file, or that there was none to write. */
export const mendedInWords = (count: number): string =>
  count === 0 ? 'nothing here is certain enough to be written' : `${plural(count, 'change')} written`

/** Why a file could not be mended. */
export const unmendable = {
  readOnly: 'cannot be written: it is read-only. The changes above were not made',
  changed: 'was changed while it was looked at, and is left as it is; run the command again',
  unreadable: 'cannot be read as text',
  unwritable: (why: string) => `cannot be written: ${why}. The changes above were not made`,
} as const
