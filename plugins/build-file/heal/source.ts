import {isCollection, isMap, isScalar, type Node, type Pair, visit, type YAMLMap} from 'yaml'
import {shortParts} from '../reading/read-short.ts'
import {type ReadingContext, textOf} from '../reading/reading-context.ts'
import {asScalar} from '../reading/trial.ts'
import type {RecordOf} from '../schema/kinds.ts'
import type {Edit, Place} from '../schema/problem.ts'
import type {YamlTree} from '../yaml/yaml-tree.ts'

/** What would mend a slip: texts for the place of the problem, or edits that reach further. */
export interface Mend {
  texts: readonly string[]
  isSure: boolean
  /** The place that the texts take, where it is not the problem's own. */
  at?: Omit<Edit, 'text'>
  edits?: Edit[][]
  /** The whole message, where "x would do" is not how to say it. */
  message?: string
  /** A problem that goes with another, and is not told for itself. */
  isTold?: boolean
}

/** What mends are looked for in. */
export interface Healing {
  context: ReadingContext
  source: Source
}

type Block = Pick<YAMLMap, 'items' | 'flow' | 'range'>

/** List where what stands in braces and brackets starts and ends. */
function bracesOf(root: Node | null): [number, number][] {
  const braces: [number, number][] = []
  visit(root, {
    Collection: (_, node) => {
      if (node.flow && node.range) braces.push([node.range[0], node.range[1]])
    },
  })
  return braces
}

/** The text of the YAML with its tree: what stands where, and how it would be changed. */
export class Source {
  readonly text: string
  readonly root: Node | null
  readonly #between: YamlTree['between']
  #braces: [number, number][] | undefined

  constructor(text: string, {doc, between}: Pick<YamlTree, 'doc' | 'between'>) {
    this.text = text
    this.root = doc.contents as Node | null
    this.#between = between
  }

  /** The text of a node, without what follows its last sign. */
  sourceOf = (node: Node): string => this.text.slice(node.range![0], this.endOf(node))

  endOf(node: Node): number {
    const [start, end] = node.range!
    return start + this.text.slice(start, end).trimEnd().length
  }

  isInBraces = (node: Node): boolean => {
    const at = node.range?.[0] ?? 0
    this.#braces ??= bracesOf(this.root)
    return this.#braces.some(([from, to]) => from < at && at < to)
  }

  place = (from: number, to: number): Place => this.#between(from, to)

  edit = (from: number, to: number, text: string): Edit => ({...this.#between(from, to), text})

  /** Where a pair starts and ends. */
  extentOf({key, value}: {key: unknown; value: unknown}): [number, number] {
    const start = (key as Node).range![0]
    const last = value as Node | null
    const isEmpty = !last?.range || (isScalar(last) && !last.source && last.range[0] === last.range[1])
    return [start, isEmpty ? (key as Node).range![1] + this.#colonAfter(key as Node) : this.endOf(last)]
  }

  #colonAfter(key: Node): number {
    return /^\s*:/.exec(this.text.slice(key.range![1]))?.[0].length ?? 0
  }

  /** Take a pair out: its lines, or its part of the braces with one comma. */
  removal(pair: Pair, {flow}: Pick<Block, 'flow'>): Edit {
    const [start, end] = this.extentOf(pair)
    if (flow) {
      const after = /^\s*,\s*/.exec(this.text.slice(end))?.[0].length
      if (after !== undefined) return this.edit(start, end + after, '')
      const before = /,\s*$/.exec(this.text.slice(0, start))?.[0].length ?? 0
      return this.edit(start - before, end, '')
    }
    const from = this.text.lastIndexOf('\n', start - 1) + 1
    const next = this.text.indexOf('\n', end)
    const isOwnLine = this.text.slice(from, start).trim() === ''
    if (!isOwnLine) return this.edit(start, end, '')
    return next < 0 ? this.edit(Math.max(0, from - 1), this.text.length, '') : this.edit(from, next + 1, '')
  }

  /** Put pairs into a record of the file's first level, whatever way it is written; undefined where that cannot be. */
  insertion(name: string, kind: RecordOf, pairs: readonly (readonly [string, string])[]): Edit | undefined {
    if (!isMap(this.root)) return undefined
    const own = this.root.items.find(({key}) => isScalar(key) && textOf(key) === name)
    const node = own?.value as Node | null | undefined
    if (!own || !node) return undefined
    if (isMap(node)) {
      const last = node.items.at(-1)
      if (!last) return this.edit(node.range![0], node.range![1], braces(pairs))
      const [, end] = this.extentOf(last)
      if (node.flow) return this.edit(end, end, `, ${inner(pairs)}`)
      const start = (node.items[0]!.key as Node).range![0]
      const indent = this.text.slice(this.text.lastIndexOf('\n', start - 1) + 1, start)
      const lineEnd = this.text.indexOf('\n', end)
      const at = lineEnd < 0 ? this.text.length : lineEnd
      return this.edit(at, at, pairs.map(([key, value]) => `\n${indent}${key}: ${value}`).join(''))
    }
    if (isCollection(node) || !isScalar(node) || !kind.short) return undefined
    if (node.value === null) return undefined
    const parts = shortParts(textOf(node), kind.short.between, kind.short.keys.length)
    if (parts.length > kind.short.keys.length) return undefined
    const said = parts.map(({text}, at) => [kind.short!.keys[at]!, asScalar(text, true)] as const)
    return this.edit(node.range![0], this.endOf(node), braces([...said, ...pairs]))
  }
}

const inner = (pairs: readonly (readonly [string, string])[]): string =>
  pairs.map(([key, value]) => `${key}: ${value}`).join(', ')

export const braces = (pairs: readonly (readonly [string, string])[]): string => `{${inner(pairs)}}`
