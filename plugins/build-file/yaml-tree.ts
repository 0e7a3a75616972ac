import {
  type Alias,
  type Document,
  isAlias,
  isCollection,
  isNode,
  isPair,
  isScalar,
  LineCounter,
  type Node,
  parseDocument,
} from 'yaml'
import type {Place, Problem} from './problem.ts'
import type {ReaderRule} from './rules.ts'
import {slipInWords} from './yaml-words.ts'

const mostWarnings = 20
const mostUnfolded = 10_000
/** Signs that may part values: a rack of ten thousand pieces has as many. */
const mostSigns = 150_000

/** Parsed YAML with a way from its nodes to places of the file. */
export interface YamlTree {
  doc: Document.Parsed
  /** Find what an alias stands for. */
  targetOf: (alias: Alias) => Node | undefined
  placeOf: (node: Node | null | undefined, from?: number, to?: number) => Place
  /** Find where a stretch of the text stands, by its first sign and the one after its last. */
  between: (start: number, end: number) => Place
  problems: Problem<ReaderRule>[]
  /** Values past the first slip of syntax are guesses of the parser. */
  soundUpToLine: number
}

/**
 * Parse YAML and report every slip of syntax at its place; nothing is thrown and no value is made.
 * `firstLine` is the line of the file on which the text starts.
 */
export function yamlTree(text: string, firstLine: number): YamlTree {
  const lines = text.split('\n')
  const tooMuch = lineOfTooMuch(lines)
  const counter = new LineCounter()
  const doc = parseDocument(tooMuch === undefined ? text : '', {
    prettyErrors: false,
    lineCounter: counter,
    uniqueKeys: false,
    keepSourceTokens: false,
  })
  const point = (offset: number) => {
    const {line, col} = counter.linePos(offset)
    if (line === 0) return {line: firstLine, column: 1}
    return {line: line + firstLine - 1, column: Math.min(col, lines[line - 1]!.length + 1)}
  }
  const between = (start: number, end: number): Place => {
    const a = point(start)
    const b = point(Math.max(start, end))
    return {line: a.line, column: a.column, endLine: b.line, endColumn: b.column}
  }
  const problems: Problem<ReaderRule>[] = []
  if (tooMuch !== undefined)
    problems.push({
      rule: 'file-too-large',
      severity: 'error',
      line: tooMuch + firstLine,
      column: 1,
      endLine: tooMuch + firstLine,
      endColumn: lines[tooMuch]!.length + 1,
      message: 'up to here there are more values than can be read, so none is; take most of them out',
    })
  let soundUpToLine = Number.POSITIVE_INFINITY
  // What follows a slip of syntax is misread because of it: only the first is told.
  const [error] = [...doc.errors].sort((a, b) => a.pos[0] - b.pos[0])
  for (const slip of [...(error ? [error] : []), ...doc.warnings.slice(0, mostWarnings)]) {
    const isError = slip === error
    const indented = isError ? indentedLine(doc, counter, text) : undefined
    const place = indented
      ? {
          ...between(0, 0),
          line: indented + firstLine - 1,
          endLine: indented + firstLine - 1,
          column: 1,
          endColumn: lines[indented - 1]!.length + 1,
        }
      : between(slip.pos[0], slip.pos[1])
    if (isError) soundUpToLine = Math.min(point(slip.pos[0]).line, place.line)
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
    const reason = slipInWords(indented ? {code: 'BAD_INDENT', message: 'indent'} : slip)
    problems.push({
      rule: slip.code === 'MULTIPLE_DOCS' ? 'two-documents' : 'unreadable-yaml',
      severity: isError ? 'error' : 'warning',
      ...place,
      message: reason,
    })
  }
  const {targets, empty, lost, bomb} = aliasesOf(doc)
  const placeOf = (node: Node | null | undefined, from = 0, to?: number): Place => {
    const range = node?.range
    if (!range) return {line: firstLine, column: 1, endLine: firstLine, endColumn: 1}
    return between(range[0] + from, to === undefined ? range[1] : range[0] + to)
  }
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
  return {
    doc,
    targetOf: (alias) => targets.get(alias),
    placeOf,
    between,
    problems,
    soundUpToLine: bomb || tooMuch !== undefined ? 0 : soundUpToLine,
  }
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

interface Aliases {
  targets: ReadonlyMap<Alias, Node>
  /** One that stands for nothing. */
  empty: readonly Alias[]
  /** A value that is nothing but a name for others to repeat. */
  lost: readonly Node[]
  /** The first one past all reason, or that leads back to itself. */
  bomb: Alias | undefined
}

/** Find the line, from 0, past which a text has more signs that part values than are read. */
function lineOfTooMuch(lines: readonly string[]): number | undefined {
  let count = 0
  const at = lines.findIndex((line) => {
    count += line.match(/[,[\]{}?!&*]|:(?=\s|$)|-(?=\s|$)/g)?.length ?? 0
    return count > mostSigns
  })
  return at < 0 ? undefined : at
}

/** Find in one walk what each alias stands for, and how much all of them unfold into, without unfolding any. */
function aliasesOf(doc: Document.Parsed): Aliases {
  const anchors = new Map<string, {node: Node; size: number}>()
  const targets = new Map<Alias, Node>()
  const empty: Alias[] = []
  const lost: Node[] = []
  let unfolded = 0
  let bomb: Alias | undefined
  const sizeOf = (node: unknown): number => {
    if (isPair(node)) return sizeOf(node.key) + sizeOf(node.value)
    if (!isNode(node)) return 1
    if (isAlias(node)) {
      const anchor = anchors.get(node.source)
      if (anchor) targets.set(node, anchor.node)
      else empty.push(node)
      unfolded += anchor?.size ?? 0
      if (unfolded > mostUnfolded) bomb ??= node
      return anchor?.size ?? 1
    }
    if (node.anchor && isScalar(node) && node.value === null && !node.source) lost.push(node)
    // An alias to what stands around it unfolds without end.
    const anchor = node.anchor === undefined ? undefined : {node, size: Number.POSITIVE_INFINITY}
    if (anchor) anchors.set(node.anchor!, anchor)
    let size = 1
    if (isCollection(node)) for (const item of node.items) size += sizeOf(item)
    if (anchor) anchor.size = size
    return size
  }
  sizeOf(doc.contents)
  return {targets, empty, lost, bomb}
}
