import {
  type Alias,
  type Document,
  isAlias,
  isCollection,
  isNode,
  isPair,
  LineCounter,
  type Node,
  parseDocument,
} from 'yaml'
import type {Place, Problem} from './problem.ts'
import type {ReaderRule} from './rules.ts'

const mostUnfolded = 100_000

/** Parsed YAML with a way from its nodes to places of the file. */
export interface YamlTree {
  doc: Document.Parsed
  /** Find what an alias stands for. */
  targetOf: (alias: Alias) => Node | undefined
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
  const {targets, empty, bomb} = aliasesOf(doc)
  const placeOf = (node: Node | null | undefined, from = 0, to?: number): Place => {
    const range = node?.range
    if (!range) return {line: firstLine, column: 1, endLine: firstLine, endColumn: 1}
    return between(range[0] + from, to === undefined ? range[1] : range[0] + to)
  }
  for (const alias of empty)
    problems.push({
      rule: 'unreadable-yaml',
      severity: 'error',
      ...placeOf(alias),
      message: `*${alias.source} stands for nothing, since no &${alias.source} comes before it; put quotes round a text that starts with *`,
    })
  if (bomb)
    problems.push({
      rule: 'alias-bomb',
      severity: 'error',
      ...placeOf(bomb),
      message:
        'aliases that unfold into more than a hundred thousand values are not read; write the values out',
    })
  return {
    doc,
    targetOf: (alias) => targets.get(alias),
    placeOf,
    problems,
    soundUpToLine: bomb ? 0 : soundUpToLine,
  }
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

interface Aliases {
  targets: ReadonlyMap<Alias, Node>
  /** One that stands for nothing. */
  empty: readonly Alias[]
  /** The first one past all reason, or that leads back to itself. */
  bomb: Alias | undefined
}

/** Find in one walk what each alias stands for, and how much all of them unfold into, without unfolding any. */
function aliasesOf(doc: Document.Parsed): Aliases {
  const anchors = new Map<string, {node: Node; size: number}>()
  const targets = new Map<Alias, Node>()
  const empty: Alias[] = []
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
    // An alias to what stands around it unfolds without end.
    const anchor = node.anchor === undefined ? undefined : {node, size: Number.POSITIVE_INFINITY}
    if (anchor) anchors.set(node.anchor!, anchor)
    let size = 1
    if (isCollection(node)) for (const item of node.items) size += sizeOf(item)
    if (anchor) anchor.size = size
    return size
  }
  sizeOf(doc.contents)
  return {targets, empty, bomb}
}
