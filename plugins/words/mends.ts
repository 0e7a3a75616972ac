import type {Problem} from '../build-file/schema/problem.ts'
import {applied, type Change, changeBetween, editsOf} from '../build-file/yaml/apply-edits.ts'

/** Show a change as its lines before and after: `3  - scale: 24 inn`, then `   + scale: 24 in`; lines that stay are not. */
export function changeInWords(change: Change): string[] {
  return stretchesOf(change).flatMap(({line, before, after}) => {
    const number = String(line)
    const gap = ' '.repeat(number.length)
    return [...before.map((each) => `- ${each}`), ...after.map((each) => `+ ${each}`)].map(
      (each, at) => `  ${at === 0 ? number : gap}  ${each}`,
    )
  })
}

/** Part a change where lines between stay as they are: a value may have moved from one line to another further up. */
function stretchesOf({line, before, after}: Change): Change[] {
  // How many lines stay of those from here on (the longest common subsequence).
  const stay = Array.from({length: before.length + 1}, () => new Array<number>(after.length + 1).fill(0))
  for (let i = before.length - 1; i >= 0; i--)
    for (let k = after.length - 1; k >= 0; k--)
      stay[i]![k] =
        before[i] === after[k] ? stay[i + 1]![k + 1]! + 1 : Math.max(stay[i + 1]![k]!, stay[i]![k + 1]!)
  const found: Change[] = []
  let here: {line: number; before: string[]; after: string[]} = {line, before: [], after: []}
  const close = (next: number) => {
    if (here.before.length + here.after.length > 0) found.push(here)
    here = {line: next, before: [], after: []}
  }
  let [i, k] = [0, 0]
  while (i < before.length || k < after.length) {
    if (i < before.length && before[i] === after[k]) {
      close(line + i + 1)
      i += 1
      k += 1
    } else if (k >= after.length || (i < before.length && stay[i + 1]![k]! >= stay[i]![k + 1]!)) {
      here.before.push(before[i]!)
      i += 1
    } else {
      here.after.push(after[k]!)
      k += 1
    }
  }
  close(line)
  return found
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
