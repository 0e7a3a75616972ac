import {
  type Document,
  isAlias,
  isCollection,
  isPair,
  LineCounter,
  type Node,
  parseDocument,
  visit,
} from 'yaml'
import type {Place, Problem} from './problem.ts'
import type {ReaderRule} from './rules.ts'

const mostUnfolded = 100_000

/** Parsed YAML with a way from its nodes to places of the file. */
interface YamlTree {
  doc: Document.Parsed
  placeOf: (node: Node | null | undefined, from?: number, to?: number) => Place
  problems: Problem<ReaderRule>[]
  /** Values past the first slip of syntax are guesses of the parser. */
  soundUpToLine: number
}

const inWords: Record<string, string> = {
  BAD_INDENT: 'this line is indented differently from its neighbours',
  BLOCK_AS_IMPLICIT_KEY:
    'a key and its value stand on the line of another key; put them on a line of their own, or quotes round a text with a colon',
  MULTIPLE_DOCS: 'a second document begins here; only one block of dimensions is read',
  TAB_AS_INDENT: 'a tab indents this line; YAML wants blanks',
  UNEXPECTED_TOKEN: 'this cannot be read here',
}

/**
 * Parse YAML and report every slip of syntax at its place; nothing is thrown and no value is made.
 * `firstLine` is the line of the file on which the text starts.
 */
export function yamlTree(text: string, firstLine: number): YamlTree {
  const counter = new LineCounter()
  const doc = parseDocument(text, {
    prettyErrors: false,
    lineCounter: counter,
    uniqueKeys: false,
    keepSourceTokens: false,
  })
  const point = (offset: number) => {
    const {line, col} = counter.linePos(offset)
    return line === 0 ? {line: firstLine, column: 1} : {line: line + firstLine - 1, column: col}
  }
  const between = (start: number, end: number): Place => {
    const a = point(start)
    const b = point(Math.max(start, end))
    return {line: a.line, column: a.column, endLine: b.line, endColumn: b.column}
  }
  const problems: Problem<ReaderRule>[] = []
  let soundUpToLine = Number.POSITIVE_INFINITY
  for (const slip of [...doc.errors, ...doc.warnings]) {
    const place = between(slip.pos[0], slip.pos[1])
    const isError = slip.name === 'YAMLParseError'
    if (isError) soundUpToLine = Math.min(soundUpToLine, place.line)
    const comment = isError ? commentInPitch(text, slip.pos[0]) : undefined
    if (comment !== undefined) {
      problems.push({
        rule: 'unreadable-yaml',
        severity: 'error',
        ...between(comment, comment + 1),
        message:
          'a # after a blank starts a comment, so what stands open before it never ends; write a sharp without the blank: F#3',
      })
      soundUpToLine = Math.min(soundUpToLine, point(comment).line)
      continue
    }
    const reason = reasonOf(slip)
    problems.push({
      rule: slip.code === 'MULTIPLE_DOCS' ? 'two-documents' : 'unreadable-yaml',
      severity: isError ? 'error' : 'warning',
      ...place,
      message: reason,
    })
  }
  const bomb = aliasThatUnfolds(doc)
  const placeOf = (node: Node | null | undefined, from = 0, to?: number): Place => {
    const range = node?.range
    if (!range) return {line: firstLine, column: 1, endLine: firstLine, endColumn: 1}
    return between(range[0] + from, to === undefined ? range[1] : range[0] + to)
  }
  if (bomb)
    problems.push({
      rule: 'alias-bomb',
      severity: 'error',
      ...placeOf(bomb),
      message:
        'aliases that unfold into more than a hundred thousand values are not read; write the values out',
    })
  return {doc, placeOf, problems, soundUpToLine: bomb ? 0 : soundUpToLine}
}

function reasonOf({code, message}: {code: string; message: string}): string {
  const open = /end with a ([}\]])/.exec(message)?.[1]
  if (open) return `a ${open === '}' ? '{' : '['} above is not closed: put ${open} where it ends`
  return inWords[code] ?? lowerFirst(message.replace(/\s+/g, ' '))
}

/** Find a `#` that was meant as a sharp, in the last line of text before a slip of syntax. */
function commentInPitch(text: string, slip: number): number | undefined {
  const before = text.slice(0, slip).trimEnd()
  const start = before.lastIndexOf('\n') + 1
  const line = text.slice(start, text.indexOf('\n', start) < 0 ? undefined : text.indexOf('\n', start))
  const found = /[[{,:]\s*[A-Ga-g] #-?\d/.exec(line)
  return found ? start + found.index + found[0].indexOf('#') : undefined
}

const lowerFirst = (text: string) => text.charAt(0).toLowerCase() + text.slice(1)

/** Find an alias whose unfolding is past all reason, without unfolding it. */
function aliasThatUnfolds(doc: Document.Parsed): Node | undefined {
  const sizes = new Map<string, number>()
  let found: Node | undefined
  const sizeOf = (node: unknown): number => {
    if (isAlias(node)) {
      const size = sizes.get(node.source) ?? 1
      if (size > mostUnfolded && !found) found = node
      return size
    }
    if (isPair(node)) return sizeOf(node.key) + sizeOf(node.value)
    let size = 1
    if (isCollection(node)) for (const item of node.items) size += sizeOf(item)
    const anchor = (node as {anchor?: string} | null)?.anchor
    if (anchor) sizes.set(anchor, size)
    if (size > mostUnfolded && !found) {
      visit(node as Node, {
        Alias: (_, alias) => {
          found ??= alias
        },
      })
    }
    return size
  }
  sizeOf(doc.contents)
  return found
}
