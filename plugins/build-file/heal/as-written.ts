import {whatWouldDo} from '../quantities/reading.ts'
import type {ReaderRule} from '../rules/rules.ts'
import type {Problem} from '../schema/problem.ts'
import {applied} from '../yaml/apply-edits.ts'
import {rewritingInWords, slipInWords} from '../yaml/yaml-words.ts'
import type {Healed, Rewritten} from './yaml-lines.ts'

const mostWays = 4

interface Told {
  change: Rewritten
  problem: Problem<ReaderRule>
  /** The line of the healed file on which the change starts, and how many lines it has there. */
  line: number
  count: number
  ways: string[]
  /** How many of them, from the first, stand for the lines that the problems were found in. */
  own: number
}

/**
 * Place the problems of a healed text in the text as it was written, after what had to be rewritten. What is wrong
 * with a value on a rewritten line goes into the line that would do.
 */
export function placedAsWritten(
  problems: readonly Problem<ReaderRule>[],
  text: string,
  {changes}: Healed,
  firstLine: number,
): Problem<ReaderRule>[] {
  const lines = text.split('\n')
  let added = 0
  const told = changes.map((change): Told => {
    const count = change.ways[0]?.length ?? change.to - change.from
    const line = change.from + firstLine + added
    added += count - (change.to - change.from)
    const own = lines.slice(change.from, change.to)
    const gap = Math.min(...[own, ...change.ways].map((each) => /^\s*/.exec(each[0] ?? '')![0].length))
    const isSameGap =
      change.ways.length > 0 &&
      change.ways.every((each) => /^\s*/.exec(each[0] ?? '')![0] === /^\s*/.exec(own[0] ?? '')![0])
    const column = isSameGap ? gap + 1 : 1
    return {
      change,
      line,
      count,
      ways: change.ways.map((each) => each.join('\n').slice(column - 1)),
      own: 1,
      problem: {
        rule: 'unreadable-yaml',
        severity: 'error',
        line: change.from + firstLine,
        column,
        endLine: change.to - 1 + firstLine,
        endColumn: (own.at(-1)?.length ?? 0) + 1,
        message: change.ways[0]
          ? rewritingInWords(own.join('\n'), change.ways[0].join('\n'), change.slip)
          : slipInWords(change.slip),
      },
    }
  })
  // From the end, so that no column of a line moves before its turn.
  const within = [...problems].sort((a, b) => b.line - a.line || b.column - a.column)
  const others = within.flatMap((problem) => {
    const one = told.find(({line, count}) => problem.endLine >= line && problem.line < line + count)
    if (!one) return [moved(problem, told)]
    return fold(problem, one)
  })
  return [...told.map(({problem, change, ways}) => ended(problem, ways, change)), ...others]
}

function ended(
  problem: Problem<ReaderRule>,
  ways: readonly string[],
  {isSure}: Rewritten,
): Problem<ReaderRule> {
  const isLine = ways.every((way) => !way.includes('\n'))
  const would = isLine ? whatWouldDo(ways.map((way) => way.trim())) : ''
  return {
    ...problem,
    message: problem.message + would,
    expected: ways.length > 0 ? [...ways] : undefined,
    ...(isSure && ways.length === 1 && {sure: true as const}),
  }
}

/** Put what mends a value on a rewritten line into that line; where several would do, each. */
function fold(problem: Problem<ReaderRule>, told: Told): Problem<ReaderRule>[] {
  const {line, count} = told
  const {expected = [], edits} = problem
  const isWithin = !edits && problem.line >= line && problem.endLine < line + count
  const shift = told.problem.column - 1
  const place = {...problem, ...placeOfWhole(told)}
  if (expected.length === 0 || !isWithin || told.ways.length * expected.length > mostWays)
    return [{...place, expected: undefined, sure: undefined, edits: undefined}]
  const inWay = (at: {line: number; column: number}) => ({
    line: at.line - line + 1,
    column: at.line === line ? at.column - shift : at.column,
  })
  const start = inWay(problem)
  const end = inWay({line: problem.endLine, column: problem.endColumn})
  const mended = told.ways
    .slice(0, told.own)
    .flatMap((way) =>
      expected.map((text) => applied(way, [{...start, endLine: end.line, endColumn: end.column, text}])),
    )
  told.ways = [...mended, ...told.ways.slice(told.own)]
  told.own = mended.length
  return problem.sure ? [] : [{...place, expected: undefined, sure: undefined}]
}

const placeOfWhole = ({problem: {line, column, endLine, endColumn}}: Told) => ({
  line,
  column,
  endLine,
  endColumn,
})

/** Move a problem from the healed lines to the same lines as written. */
function moved(problem: Problem<ReaderRule>, told: readonly Told[]): Problem<ReaderRule> {
  const by = (line: number): number =>
    told
      .filter((one) => one.line + one.count <= line)
      .reduce((sum, {change, count}) => sum + (change.to - change.from) - count, 0)
  const touches = (line: number) => told.some((one) => line >= one.line && line < one.line + one.count)
  const {cause, edits} = problem
  const isClear = edits?.every((each) => each.every((edit) => !touches(edit.line) && !touches(edit.endLine)))
  return {
    ...problem,
    line: problem.line + by(problem.line),
    endLine: problem.endLine + by(problem.endLine),
    ...(cause && {cause: {line: cause.line + by(cause.line), column: cause.column}}),
    ...(edits &&
      (isClear
        ? {
            edits: edits.map((each) =>
              each.map((edit) => ({
                ...edit,
                line: edit.line + by(edit.line),
                endLine: edit.endLine + by(edit.endLine),
              })),
            ),
          }
        : {edits: undefined, expected: undefined, sure: undefined})),
  }
}
