import type {Scalar} from 'yaml'
import {softwoodThicknesses, softwoodWidths} from '../../tables/lumber.ts'
import {readLength} from '../quantities/read-length.ts'
import {whatWouldDo} from '../quantities/reading.ts'
import {fineRulers, writeBare} from '../quantities/write-length.ts'
import type {Kind, RecordOf} from '../schema/kinds.ts'
import type {Place} from '../schema/problem.ts'
import {nameOf, type ReadingContext, readText, report, textOf, wrongShape} from './reading-context.ts'

/** Split the one line that stands for a record, and read each part as the key it stands for. */
export function readShort(
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
