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
import type {ReaderRule} from '../rules/rules.ts'
import type {Place, Problem} from '../schema/problem.ts'
import {type Aliases, type Places, type Slips, slipsOfAliases, slipsOfSyntax} from './yaml-slips.ts'

const mostUnfolded = 10_000

/** Signs that may part values: a rack of ten thousand pieces has as many. */
const mostSigns = 150_000

/** Parsed YAML with a way from its nodes to places of the file. */
export interface YamlTree extends Places, Slips {
  doc: Document.Parsed
  /** Find what an alias stands for. */
  targetOf: (alias: Alias) => Node | undefined
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
  const lineAt = (line: number): Place => {
    const inFile = line + firstLine - 1
    return {line: inFile, column: 1, endLine: inFile, endColumn: lines[line - 1]!.length + 1}
  }
  const placeOf = (node: Node | null | undefined, from = 0, to?: number): Place => {
    const range = node?.range
    if (!range) return {line: firstLine, column: 1, endLine: firstLine, endColumn: 1}
    return between(range[0] + from, to === undefined ? range[1] : range[0] + to)
  }
  const tooLarge: Problem<ReaderRule>[] =
    tooMuch === undefined
      ? []
      : [
          {
            rule: 'file-too-large',
            severity: 'error',
            ...lineAt(tooMuch),
            message: 'up to here there are more values than can be read, so none is; take most of them out',
          },
        ]
  const slips = slipsOfSyntax(doc, text, counter, {between, lineAt})
  const aliases = aliasesOf(doc)
  return {
    doc,
    targetOf: (alias) => aliases.targets.get(alias),
    placeOf,
    between,
    problems: [...tooLarge, ...slips.problems, ...slipsOfAliases(aliases, placeOf)],
    soundUpToLine: aliases.bomb || tooLarge.length > 0 ? 0 : slips.soundUpToLine,
  }
}

/** Find the line (from 1) on which a text comes to more signs that part values than are read. */
function lineOfTooMuch(lines: readonly string[]): number | undefined {
  let count = 0
  const at = lines.findIndex((line) => {
    count += line.match(/[,[\]{}?!&*]|:(?=\s|$)|-(?=\s|$)/g)?.length ?? 0
    return count > mostSigns
  })
  return at < 0 ? undefined : at + 1
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
