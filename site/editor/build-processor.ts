import type {Root} from 'mdast'
import {type Processor, unified} from 'unified'
import type {VFile} from 'vfile'
import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import {applied, editsOf} from '../../plugins/build-file/yaml/apply-edits.ts'
import {textReader} from '../journal/read-text.ts'
import {readSettings} from '../journal/settings.ts'
import {emptyKeys} from './empty-keys.ts'
import {journalFile} from './whose-file.ts'

/** What an editor runs over a text of the journal while it is typed: problems as messages, the text as it is. */
export const buildProcessor = unified().use(tellProblems).freeze()

function tellProblems(this: Processor) {
  const asWritten = this as {parser?: unknown; compiler?: unknown}
  asWritten.parser = (): Root => ({type: 'root', children: []})
  // Nothing is ever written anew: what an editor calls formatting leaves every sign where it stands.
  asWritten.compiler = (_: Root, file: VFile) => String(file)
  return async (_: Root, file: VFile): Promise<void> => {
    const own = journalFile(file.path)
    if (!own) return
    const {settings} = await readSettings(own.folder)
    const text = String(file)
    const {problems} = textReader(own.name, own.slug, settings)(text)
    for (const problem of [...problems, ...emptyKeys(text, own.name)]) tell(problem, text, file)
  }
}

/** Tell a problem at its place, with each value that would do as the text that takes that place. */
function tell(problem: Problem, text: string, file: VFile): void {
  const {rule, severity, message, note, cause} = problem
  const {from, to, texts} = stretchOf(problem, text)
  const see = cause ? ` (see line ${cause.line}, column ${cause.column})` : ''
  const place = {start: pointAt(text, from), end: pointAt(text, to)}
  const told = file.message(message + see, {place, ruleId: rule, source: 'nut-to-bridge'})
  told.fatal = severity === 'remark' ? undefined : severity !== 'warning'
  if (texts.length > 0) told.expected = texts
  if (note) told.note = note
}

/**
 * The stretch of a text (offsets) that a problem's quick fixes put another text in the place of. A fix takes the place
 * that is marked, so where one reaches further the mark does.
 */
function stretchOf(problem: Problem, text: string): {from: number; to: number; texts: string[]} {
  let from = offsetAt(text, problem.line, problem.column)
  let to = Math.max(from, offsetAt(text, problem.endLine, problem.endColumn))
  const results = (problem.expected ?? []).map((_, way) => applied(text, editsOf(problem, way)))
  for (const result of results) {
    const most = Math.min(text.length, result.length)
    let start = 0
    while (start < most && text[start] === result[start]) start += 1
    let same = 0
    while (same < most - start && text.at(-1 - same) === result.at(-1 - same)) same += 1
    from = Math.min(from, start)
    to = Math.max(to, text.length - same)
  }
  return {from, to, texts: results.map((result) => result.slice(from, result.length - (text.length - to)))}
}

const lineEnd = /\r\n?|\n/g

function offsetAt(text: string, line: number, column: number): number {
  const starts = [0, ...[...text.matchAll(lineEnd)].map(({index, 0: end}) => index + end.length)]
  return Math.min((starts[line - 1] ?? text.length) + column - 1, text.length)
}

function pointAt(text: string, offset: number): {line: number; column: number} {
  const ends = [...text.slice(0, offset).matchAll(lineEnd)]
  const last = ends.at(-1)
  return {line: ends.length + 1, column: offset - (last ? last.index + last[0].length : 0) + 1}
}
