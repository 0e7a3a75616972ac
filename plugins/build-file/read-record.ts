import {isMap, isScalar, type Node, type Pair, type Scalar, type YAMLMap} from 'yaml'
import {softwoodThicknesses, softwoodWidths} from '../tables/lumber.ts'
import type {Kind, RecordOf} from './kinds.ts'
import {nearest} from './nearest.ts'
import type {Place} from './problem.ts'
import {readLength} from './quantities/read-length.ts'
import {whatWouldDo} from './quantities/reading.ts'
import {fineRulers, writeBare} from './quantities/write-length.ts'
import {isFull, nameOf, type ReadingContext, readText, report, textOf, wrongShape} from './reading-context.ts'

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

/** Split the one line that stands for a record, and read each part as the key it stands for. */
function readShort(
  node: Scalar,
  kind: RecordOf,
  path: string,
  context: ReadingContext,
): Record<string, unknown> | undefined {
  const {keys, between} = kind.short!
  const text = textOf(node)
  const pieces = shortParts(text, between, keys.length)
  const fields = keys.slice(0, pieces.length).map((key) => kind.fields[key]!)
  if (pieces.length > keys.length || (between === ' x ' && pieces.length < keys.length))
    return wrongShape(node, kind, path, context)
  const read: Record<string, unknown> = {}
  const quoted = node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE' ? 1 : 0
  const before = context.problems.length
  pieces.forEach((piece, i) => {
    const key = `${path}.${keys[i]}`
    const from = piece.index + quoted
    const isOneLine = node.type === 'PLAIN' || quoted
    const place = isOneLine ? context.placeOf(node, from, from + piece.text.length) : context.places[path]!
    const got = readPiece(node, {text: piece.text, place}, fields[i]!, {path: key, context})
    if (got !== undefined) read[keys[i]!] = got
  })
  if (context.problems.length > before) context.records.push({node, kind, path})
  else if (kind.short!.isFalling) askWhichWay(node, kind, path, context)
  return read
}

/** Ask which of two sizes is which, where the first is the smaller; and which size is meant by what a board is sold as. */
function askWhichWay(node: Scalar, {short}: RecordOf, path: string, context: ReadingContext): void {
  const text = textOf(node)
  const [first, second] = shortParts(text, ' x ', 2).map((part) => part.text) as [string, string]
  const mm = (size: string) => {
    const read = readLength(size, context.units)
    return read.ok ? read.value.mm : 0
  }
  if (mm(first) >= mm(second)) return
  const [wide, thick] = short!.keys
  const onEdge = (a: string, b: string) => `{${wide}: ${a}, ${thick}: ${b}}`
  const dressed = context.units === 'in' ? dressedSize(first, second) : undefined
  const sizes = dressed ?? ([first, second] as const)
  const [less, more] = sizes
  const expected = [`${more} x ${less}`, onEdge(less, more), ...(dressed ? [onEdge(first, second)] : [])]
  const sold = dressed ? `; sold as ${first}x${second}, a board measures ${less} x ${more}` : ''
  report(
    context,
    {rule: 'sides-unclear', place: context.places[path]!},
    `${nameOf(path)}: "${text}" is ${wide} x ${thick}, and the ${wide} is less than the ${thick}${sold}${whatWouldDo(expected)}`,
    {expected},
  )
}

/** What a softwood board measures that is sold under two whole numbers of inches. */
function dressedSize(first: string, second: string): readonly [string, string] | undefined {
  const thick = softwoodThicknesses.find(({nominal}) => nominal === first)
  const wide = softwoodWidths.find(({nominal}) => nominal === second)
  const write = (mm: number) => writeBare(mm, fineRulers.in)
  return thick && wide && [write(thick.mm), write(wide.mm)]
}

/** Read one part of a short form; a record there is itself given by its one short value. */
function readPiece(
  node: Scalar,
  {text, place}: {text: string; place: Place},
  field: Kind,
  {path, context}: {path: string; context: ReadingContext},
): unknown {
  context.places[path] = place
  if (field.is === 'leaf') return readText(node, text, field, {path, context})
  const inner = field.is === 'record' ? field.short?.keys[0] : undefined
  if (field.is !== 'record' || !inner) return context.readValue(node, field, path, context)
  const got = readPiece(node, {text, place}, field.fields[inner]!, {path: `${path}.${inner}`, context})
  return got === undefined ? undefined : {[inner]: got}
}

/**
 * Split the one line that stands for a record into its parts, each with where it starts in the text.
 * `between` is what parts them: ` x ` as in a box, a blank as in a string's note and gauge, or nothing.
 */
export function shortParts(
  text: string,
  between: ' x ' | ' ' | '',
  count: number,
): {text: string; index: number}[] {
  if (between === '' || count === 1) return [{text, index: 0}]
  if (between === ' ') {
    // A slip such as "F #3 .017" keeps its sharp with the note, so that the message is about the note.
    const [, first = text, gap = '', rest = ''] =
      /^(\S+(?:\s+[#b♯♭]-?\d*(?=\s|$))?)(\s*)(.*)$/s.exec(text) ?? []
    const note = {text: first, index: 0}
    return rest ? [note, {text: rest, index: first.length + gap.length}] : [note]
  }
  const parts: {text: string; index: number}[] = []
  let index = 0
  for (const part of text.split(/(\s*[x×]\s*)/i)) {
    if (!/^\s*[x×]\s*$/i.test(part)) parts.push({text: part.trim(), index})
    index += part.length
  }
  return parts
}
