import {
  type Document,
  isMap,
  isScalar,
  isSeq,
  type Node,
  Scalar,
  visit,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml'
import {shortParts} from '../reading/read-short.ts'
import {textOf} from '../reading/reading-context.ts'
import type {Kind, ListOf, RecordOf} from '../schema/kinds.ts'
import {kindAt} from '../schema/path.ts'
import {buildSchema} from '../schema/schema.ts'
import type {YamlTree} from '../yaml/yaml-tree.ts'

/**
 * Set the text at a path of the schema; a short form, a count or a lone value on the way is written out first.
 * Remarks stay. Nothing is set in a list that has no such item (but where it may grow, behind its last), below `none`,
 * or where another kind of value stands.
 */
export function setText(doc: Document, path: string, text: string, mayGrow = false): void {
  const keys = path.split('.')
  const at: (string | number)[] = []
  let kind: Kind | undefined = buildSchema as unknown as Kind
  for (const [i, key] of keys.entries()) {
    kind = kindOnTheWay(kind, keys.slice(i))
    const node = at.length ? (doc.getIn(at, true) as unknown) : doc.contents
    if (kind?.is === 'list') {
      const count = countAt(doc, at, kind)
      const item = Number(key)
      if (!(item >= 1 && item <= (mayGrow ? count + 1 : count))) return
      if (mayGrow && count === 0) makeList(doc, at)
      at.push(Number(key) - 1)
      kind = kind.item
      continue
    }
    if (kind?.is !== 'record' || !Object.hasOwn(kind.fields, key)) return
    // A last key that is the record's one short value takes the place of the whole.
    const isWhole = i === keys.length - 1 && kind.short?.keys.length === 1 && kind.short.keys[0] === key
    if (isWhole && at.length && !isMap(node)) break
    if (!isMap(node) && !makeMap(doc, at, node, kind)) return
    kind = kind.fields[key] as Kind
    at.push(key)
  }
  const inner = kind?.is === 'record' ? kind.short?.keys[0] : undefined
  const there = doc.getIn(at, true)
  if (isSeq(there) || (isMap(there) && !inner)) return
  if (isMap(there)) at.push(inner!)
  doc.setIn(at, keepingRemarks(doc.getIn(at, true), scalarOf(text)))
}

/** Of a kind that is either of two, take the one that the rest of a path leads through. */
const kindOnTheWay = (kind: Kind | undefined, rest: readonly string[]): Kind | undefined =>
  kind?.is === 'either' ? [kind.first, kind.second].find((each) => kindAt(rest.join('.'), each)) : kind

const isNothing = (node: unknown): boolean => node == null || (isScalar(node) && node.value === null)

/** Count the items of a list; a count or a lone value is written out as the list it stands for. */
function countAt(doc: Document, at: readonly (string | number)[], kind: ListOf<Kind>): number {
  const node = doc.getIn(at, true)
  if (isSeq(node)) return node.items.length
  if (isNothing(node)) return 0
  const count = kind.countable && isScalar(node) ? Number(textOf(node)) : Number.NaN
  const isCount = count > 0 && count <= (kind.most ?? 0)
  const list = doc.createNode(
    isCount ? Array.from({length: count}, () => ({})) : [node],
  ) as unknown as YAMLSeq
  list.flow = true
  doc.setIn(at, isScalar(node) ? keepingRemarks(node, list) : list)
  return list.items.length
}

function makeList(doc: Document, at: readonly (string | number)[]): void {
  if (isSeq(doc.getIn(at, true))) return
  const list = doc.createNode([]) as unknown as YAMLSeq
  list.flow = true
  doc.setIn(at, list)
}

/** Put the mapping that a record's short form stands for in its place, or an empty one where nothing stands. */
function makeMap(doc: Document, at: readonly (string | number)[], node: unknown, kind: RecordOf): boolean {
  if (!isScalar(node) && !isNothing(node)) return false
  const parts = isScalar(node) && !isNothing(node) ? partsOf(node, kind) : []
  if (!parts) return false
  const map = doc.createNode({}) as unknown as YAMLMap
  map.flow = true
  for (const [i, part] of parts.entries()) map.set(kind.short!.keys[i]!, scalarOf(part.text))
  doc.setIn(at, keepingRemarks(node, map as unknown as Node))
  return true
}

function partsOf(node: Scalar, {short, none}: RecordOf): {text: string}[] | undefined {
  const text = textOf(node)
  if (!short || (none && text.toLowerCase() === 'none')) return undefined
  return shortParts(text, short.between, short.keys.length)
}

function keepingRemarks<T extends Node>(from: unknown, to: T): T {
  const {comment, commentBefore, spaceBefore} = (from ?? {}) as Partial<Node>
  return Object.assign(
    to,
    comment ? {comment} : {},
    commentBefore ? {commentBefore} : {},
    spaceBefore ? {spaceBefore} : {},
  )
}

/** A plain scalar that reads as it is written. */
export function scalarOf(text: string): Scalar {
  const isNumber = /^-?(?:\d+(?:\.\d+)?|\.\d+)$/.test(text)
  const scalar = new Scalar(isNumber ? Number(text) : text)
  if (isNumber) scalar.minFractionDigits = text.split('.')[1]?.length ?? 0
  return scalar
}

/** Give the steps of a path as a document counts them, items of lists from 0. */
export const stepsOf = (path: string): (string | number)[] =>
  path.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) - 1 : step))

/** Say whether the document writes something at a path. */
export const hasAt = (doc: Document, path: string): boolean => doc.hasIn(stepsOf(path))

/** Take out what stands at a path; where nothing does, nothing happens. */
export function deleteAt(doc: Document, path: string): void {
  if (hasAt(doc, path)) doc.deleteIn(stepsOf(path))
}

/**
 * Write a document's values out plainly, so that any of them can be moved, changed or taken away by itself: aliases
 * become what they stand for, anchors and tags go, keys are words, texts stand in one line.
 */
export function writePlainly({doc, targetOf}: Pick<YamlTree, 'doc' | 'targetOf'>): void {
  visit(doc, {Alias: (_, alias) => targetOf(alias)?.clone() as Node | undefined})
  visit(doc, {
    Pair: (_, {key}) => {
      if (isScalar(key)) key.value = textOf(key)
    },
    Node: (_, node) => {
      if ('anchor' in node) delete node.anchor
      delete node.tag
      if (isScalar(node) && String(node.type).startsWith('BLOCK')) delete node.type
    },
  })
  if (isMap(doc.contents)) doc.contents.flow = false
}
