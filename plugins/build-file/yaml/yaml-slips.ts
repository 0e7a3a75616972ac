import type {Alias, Document, LineCounter, Node} from 'yaml'
import type {ReaderRule} from '../rules/rules.ts'
import type {Place, Problem} from '../schema/problem.ts'
import {slipInWords} from './yaml-words.ts'

const mostWarnings = 20

/** Ways from a parsed text to places of the file. */
export interface Places {
  placeOf: (node: Node | null | undefined, from?: number, to?: number) => Place
  /** Find where a stretch of the text stands, by its first sign and the one after its last. */
  between: (start: number, end: number) => Place
}

/** What is told of a text's syntax. */
export interface Slips {
  problems: Problem<ReaderRule>[]
  /** Values past the first slip of syntax are guesses of the parser. */
  soundUpToLine: number
}

/**
 * Tell of the first slip of syntax (what follows it is misread because of it) and of what the parser warns of; and up
 * to which line the text is sound.
 */
export function slipsOfSyntax(
  doc: Document.Parsed,
  text: string,
  counter: LineCounter,
  {between, lineAt}: {between: Places['between']; lineAt: (line: number) => Place},
): Slips {
  const problems: Problem<ReaderRule>[] = []
  for (const slip of doc.warnings.slice(0, mostWarnings))
    problems.push({
      rule: slip.code === 'MULTIPLE_DOCS' ? 'two-documents' : 'unreadable-yaml',
      severity: 'warning',
      ...between(...slip.pos),
      message: slipInWords(slip),
    })
  const [error] = [...doc.errors].sort((a, b) => a.pos[0] - b.pos[0])
  if (!error) return {problems, soundUpToLine: Number.POSITIVE_INFINITY}
  const indented = indentedLine(doc, counter, text)
  const place = indented ? lineAt(indented) : between(...error.pos)
  const soundUpToLine = Math.min(between(...error.pos).line, place.line)
  const comment = commentInPitch(text, error.pos[0])
  if (comment === undefined) {
    problems.unshift({
      rule: error.code === 'MULTIPLE_DOCS' ? 'two-documents' : 'unreadable-yaml',
      severity: 'error',
      ...place,
      message: slipInWords(indented ? {code: 'BAD_INDENT', message: 'indent'} : error),
    })
    return {problems, soundUpToLine}
  }
  const sharp = between(comment, comment + 1)
  problems.unshift({
    rule: 'unreadable-yaml',
    severity: 'error',
    ...sharp,
    message:
      'a # after a blank starts a comment, so what stands open before it never ends; write a sharp without the blank: F#3',
  })
  return {problems, soundUpToLine: Math.min(soundUpToLine, sharp.line)}
}

/** Tell of aliases and anchors that mean nothing, which are texts without their quotes, and of those past all reason. */
export function slipsOfAliases(
  {empty, lost, bomb}: Aliases,
  placeOf: Places['placeOf'],
): Problem<ReaderRule>[] {
  const problems: Problem<ReaderRule>[] = []
  for (const alias of empty.slice(0, mostWarnings))
    problems.push({
      rule: 'unreadable-yaml',
      severity: 'error',
      ...placeOf(alias),
      message: `*${alias.source} stands for nothing, since no &${alias.source} comes before it; put quotes round a text that starts with *`,
      expected: [JSON.stringify(`*${alias.source}`)],
      sure: true,
    })
  for (const node of lost)
    problems.push({
      rule: 'unreadable-yaml',
      severity: 'error',
      ...placeOf(node, -1 - node.anchor!.length, 0),
      message: `& at the start of a value has a meaning of its own here; put quotes round the whole text`,
      expected: [JSON.stringify(`&${node.anchor}`)],
      sure: true,
    })
  if (bomb)
    problems.push({
      rule: 'alias-bomb',
      severity: 'error',
      ...placeOf(bomb),
      message: 'aliases that unfold into more than ten thousand values are not read; write the values out',
    })
  return problems
}

/**
 * Find the line whose indent is the slip, where that is not where the parser stumbles: one deeper than the key above
 * it, which has its value already, or the first of keys that begin further right than all others.
 */
function indentedLine(
  {errors, contents}: Document.Parsed,
  counter: LineCounter,
  text: string,
): number | undefined {
  const [first, ...rest] = [...errors].sort((a, b) => a.pos[0] - b.pos[0])
  if (!first) return undefined
  const at = counter.linePos(first.pos[0])
  if (first.code === 'UNEXPECTED_TOKEN' && at.col === 1 && contents) {
    const start = counter.linePos(contents.range[0])
    return start.col > 1 && start.line < at.line ? start.line : undefined
  }
  if (!['BLOCK_AS_IMPLICIT_KEY', 'MULTILINE_IMPLICIT_KEY'].includes(first.code)) return undefined
  if (first.message.includes('sequence')) return at.line
  const runsOn = [first, ...rest].some(
    ({code, pos}) =>
      code === 'MULTILINE_IMPLICIT_KEY' && pos[0] === first.pos[0] && counter.linePos(pos[1]).line > at.line,
  )
  const next = text.split('\n').findIndex((line, i) => i >= at.line && /^\s*[^\s#]/.test(line))
  return runsOn && next >= 0 ? next + 1 : undefined
}

/** Find a `#` that was meant as a sharp, in the last line of text before a slip of syntax. */
function commentInPitch(text: string, slip: number): number | undefined {
  const before = text.slice(0, slip).trimEnd()
  const start = before.lastIndexOf('\n') + 1
  const line = text.slice(start, text.indexOf('\n', start) < 0 ? undefined : text.indexOf('\n', start))
  const found = /[[{,:]\s*[A-Ga-g] #-?\d/.exec(line)
  return found ? start + found.index + found[0].indexOf('#') : undefined
}

export interface Aliases {
  targets: ReadonlyMap<Alias, Node>
  /** One that stands for nothing. */
  empty: readonly Alias[]
  /** A value that is nothing but a name for others to repeat. */
  lost: readonly Node[]
  /** The first one past all reason, or that leads back to itself. */
  bomb: Alias | undefined
}
