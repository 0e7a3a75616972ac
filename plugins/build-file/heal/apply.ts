import type {Edit, Problem} from '../problem.ts'

/** Put edits into a text; where two touch, the later one in the file goes first. */
export function applied(text: string, edits: readonly Edit[]): string {
  const starts = [0]
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1)
  const offset = (line: number, column: number): number => (starts[line - 1] ?? text.length) + column - 1
  return edits
    .map(({line, column, endLine, endColumn, text: by}) => ({
      from: offset(line, column),
      to: offset(endLine, endColumn),
      by,
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
