import {isMap, isScalar, type Node, type Pair, type YAMLMap} from 'yaml'
import type {RecordOf} from '../schema/kinds.ts'
import {nearest} from '../schema/nearest.ts'
import {readShort} from './read-short.ts'
import {isFull, nameOf, type ReadingContext, report, textOf, wrongShape} from './reading-context.ts'

/** Read a mapping by its fields, or the one line of text that stands for its commonest form. */
export function readRecord(
  node: Node,
  kind: RecordOf,
  path: string,
  context: ReadingContext,
): Record<string, unknown> | undefined {
  if (isScalar(node)) {
    if (kind.none && textOf(node).toLowerCase() === 'none') return undefined
    return kind.short ? readShort(node, kind, path, context) : wrongShape(node, kind, path, context)
  }
  if (!isMap(node)) return wrongShape(node, kind, path, context)
  const read: Record<string, unknown> = {}
  for (const {key, name, value} of pairsOf(node, path, context)) {
    const field = Object.hasOwn(kind.fields, name) ? kind.fields[name] : undefined
    const own = path ? `${path}.${name}` : name
    if (!field) {
      unknownKey({path: own, key, node: value, map: node, kind}, name, path, context)
      continue
    }
    const got = value ? context.readValue(value, field, own, context) : undefined
    if (got !== undefined) read[name] = got
  }
  return read
}

interface NamedPair {
  key: Node
  name: string
  value: Node | null
}

/** More keys than this in one mapping are nothing that somebody wrote. */
const mostKeys = 500

/** List a mapping's pairs once each, and report keys given twice, and more keys than there can be. */
export function pairsOf(
  {items}: {items: readonly Pair[]},
  path: string,
  context: ReadingContext,
  most = mostKeys,
): NamedPair[] {
  const tooMany = items[most]?.key as Node | undefined
  if (tooMany)
    report(
      context,
      {rule: 'out-of-range', place: context.placeOf(tooMany)},
      `${nameOf(path) || 'the file'}: ${items.length} keys given, where at most ${most} can be; those from here on are not read`,
    )
  const seen = new Map<string, Node>()
  const pairs: NamedPair[] = []
  for (const pair of items.slice(0, most)) {
    const key = pair.key as Node
    if (!isScalar(key)) {
      report(context, {rule: 'wrong-shape', place: context.placeOf(key)}, 'a key must be one word')
      continue
    }
    const name = textOf(key)
    const first = seen.get(name)
    if (first) {
      const own = path ? `${path}.${name}` : name
      const why = `${nameOf(own)} is given twice, first in line ${context.placeOf(first).line}; keep one`
      report(context, {rule: 'key-twice', place: context.placeOf(key)}, why, {
        cause: context.placeOf(first),
        about: {path: own, key, node: pair.value as Node | null, map: {items}, why},
      })
      continue
    }
    seen.set(name, key)
    context.keys[path ? `${path}.${name}` : name] = context.placeOf(key)
    pairs.push({key, name, value: pair.value as Node | null})
  }
  return pairs
}

/** More keys than this are a list that nobody reads in a message. */
const mostListed = 12

/** Report a key that its mapping does not have. */
function unknownKey(
  about: {path: string; key: Node; node: Node | null; map: YAMLMap; kind: RecordOf},
  name: string,
  path: string,
  context: ReadingContext,
): void {
  const {key, node, map, kind} = about
  const known = Object.keys(kind.fields)
  const place = context.placeOf(key)
  if (map.flow && (!node || (isScalar(node) && node.value === null))) {
    const why = `the comma before "${name}" has made a key of it`
    report(context, {rule: 'comma-in-braces', place}, `${why}; put quotes round the whole text`, {
      about: {...about, why},
    })
    return
  }
  if (isFull(context)) return
  const close = nearest(name, known)
  const where = path ? ` in ${nameOf(path)}` : ''
  const isShort = path !== '' && known.length <= mostListed
  const instead = close
    ? `; was ${close} meant?`
    : isShort
      ? `; what is known there: ${known.join(', ')}`
      : ''
  const why = `${name} is not a key that is known${where}`
  report(context, {rule: 'unknown-key', place}, why + instead, {
    expected: close ? [close] : isShort ? known : undefined,
    about: {...about, why},
  })
}
