import type {Edit, Problem} from '../schema/problem.ts'

/** Put edits into a text whatever its line ends; where two touch, the later one in the file goes first. */
export function applied(text: string, edits: readonly Edit[]): string {
  const starts = [text.startsWith('\uFEFF') ? 1 : 0]
  for (const end of text.matchAll(/\r\n?|\n/g)) starts.push(end.index + end[0].length)
  const lineEnd = /\r\n?|\n/.exec(text)?.[0] ?? '\n'
  const offset = (line: number, column: number): number => (starts[line - 1] ?? text.length) + column - 1
  return edits
    .map(({line, column, endLine, endColumn, text: by}) => ({
      from: offset(line, column),
      to: offset(endLine, endColumn),
      by: by.replaceAll('\n', lineEnd),
    }))
    .sort((a, b) => b.from - a.from || b.to - a.to)
    .reduce((all, {from, to, by}) => all.slice(0, from) + by + all.slice(to), text)
}

/** The edits that put one of the values expected into the file. */
export function editsOf(problem: Problem, way = 0): readonly Edit[] {
  const text = problem.expected?.[way]
  if (text === undefined) return []
  const {line, column, endLine, endColumn} = problem
  return problem.edits?.[way] ?? [{line, column, endLine, endColumn, text}]
}

/** Lines of a file before and after a change. */
export interface Change {
  /** The first line that differs, from 1. */
  line: number
  before: string[]
  after: string[]
}

/** Find the lines in which two texts differ, as one stretch. */
export function changeBetween(before: string, after: string): Change {
  const old = before.split(/\r\n?|\n/)
  const now = after.split(/\r\n?|\n/)
  let start = 0
  while (start < old.length && old[start] === now[start]) start += 1
  let same = 0
  while (same < Math.min(old.length, now.length) - start && old.at(-1 - same) === now.at(-1 - same)) same += 1
  return {
    line: start + 1,
    before: old.slice(start, old.length - same),
    after: now.slice(start, now.length - same),
  }
}
