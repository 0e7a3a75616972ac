import {type Document, isMap, isScalar, isSeq, type Node, Scalar, type YAMLMap} from 'yaml'
import type {Kind, RecordOf} from './kinds.ts'
import {shortParts} from './read-record.ts'
import {buildSchema} from './schema.ts'

/** Set the text at a path of the schema; a short form on the way is written out first. Remarks stay. */
export function setText(doc: Document, path: string, text: string): void {
  const keys = path.split('.')
  let kind: Kind = buildSchema as unknown as Kind
  const at: (string | number)[] = []
  for (const [i, key] of keys.entries()) {
    const node = at.length ? (doc.getIn(at, true) as Node | undefined) : (doc.contents as Node)
    if (kind.is === 'list') {
      kind = kind.item
      if (isSeq(node)) {
        if (!node.has(Number(key) - 1)) return
        at.push(Number(key) - 1)
      }
      continue
    }
    if (kind.is !== 'record') return
    // A last key that is the record's one short value takes the place of the whole.
    const isWhole = i === keys.length - 1 && kind.short?.keys.length === 1 && kind.short.keys[0] === key
    if (isWhole && at.length && !isMap(node)) break
    if (isScalar(node) && kind.short) doc.setIn(at, writtenOut(doc, node, kind))
    const field: Kind | undefined = kind.fields[key]
    if (!field) return
    kind = field
    at.push(key)
  }
  const inner = kind.is === 'record' ? kind.short?.keys[0] : undefined
  if (isMap(doc.getIn(at, true)) && inner) at.push(inner)
  doc.setIn(at, keepingRemarks(doc.getIn(at, true), scalarOf(text)))
}

function writtenOut(doc: Document, node: Scalar, kind: RecordOf): Node {
  const {keys, between} = kind.short!
  const parts = shortParts(String(node.source ?? node.value), between, keys.length)
  const map = doc.createNode({}) as unknown as YAMLMap
  map.flow = true
  for (const [i, part] of parts.entries()) map.set(keys[i]!, scalarOf(part.text))
  return keepingRemarks(node, map as unknown as Node)
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
function scalarOf(text: string): Scalar {
  const isNumber = /^-?(?:\d+(?:\.\d+)?|\.\d+)$/.test(text)
  const scalar = new Scalar(isNumber ? Number(text) : text)
  if (isNumber) scalar.minFractionDigits = text.split('.')[1]?.length ?? 0
  return scalar
}

/** Say whether the document writes something at a path that leads through no list. */
export const hasAt = (doc: Document, path: string): boolean => doc.hasIn(path.split('.'))

/** Take out what stands at a path that leads through no list. */
export const deleteAt = (doc: Document, path: string): boolean => doc.deleteIn(path.split('.'))
