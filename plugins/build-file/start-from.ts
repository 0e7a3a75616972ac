import {
  type Document,
  isMap,
  isScalar,
  isSeq,
  type Node,
  parseDocument,
  Scalar,
  stringify,
  type YAMLMap,
} from 'yaml'
import type {Build} from './build.ts'
import {plainLines, splitFrontMatter} from './front-matter.ts'
import {giveUnits, withUnit} from './give-units.ts'
import type {Kind} from './kinds.ts'
import {writeLength} from './quantities/write-length.ts'
import {readBuild} from './read.ts'
import {shortParts} from './read-record.ts'
import {buildSchema, type JournalSettings} from './schema.ts'
import type {Length} from './values.ts'

/** What belongs to the instrument that was made, and not to its dimensions. */
const left = [
  'title',
  'based-on',
  'summary',
  'status',
  'started',
  'finished',
  'tags',
  'publish',
  'cover',
  'recordings',
  'measured',
  'played',
  'cost',
  'price',
  'stock',
  'take',
] as const

interface StartOptions {
  journal?: JournalSettings
  title?: string
  /** Another scale length, as a maker writes it; whatever lies past the octave keeps its distance from the bridge. */
  scale?: string
  units?: 'in' | 'mm'
}

/**
 * Write a build file that starts from a past build: its dimensions, as measured where they were measured, with the
 * remarks beside them; without its days, photographs, recordings, scores, measurements, dates, cost and stock.
 */
export function startFrom(source: string, slug: string, options: StartOptions = {}): string {
  const {journal} = options
  const readText = (text: string) => readBuild(text, {slug, ...(journal ? {journal} : {})}).build
  const past = readText(source)
  const own = past.values.units?.value ?? journal?.units?.value ?? 'in'
  const units = options.units ?? own
  const text = units === own ? plainLines(source) : giveUnits(source, past, own)
  const {front} = splitFrontMatter(text)
  const doc = parseDocument(front?.yaml ?? '', {uniqueKeys: false})
  if (!isMap(doc.contents)) doc.contents = doc.createNode({}) as unknown as typeof doc.contents

  for (const {path, value} of past.values.measured?.paths ?? []) {
    const text = units !== own && 'mm' in value ? withUnit(value, own) : value.text
    setText(doc, noteToNumber(path, past), text)
  }
  dropContradicted(doc, past)
  for (const key of left) doc.delete(key)
  if (options.scale !== undefined) {
    const before = readText(frame(doc)).values.scale?.length
    setText(doc, 'scale.length', options.scale)
    const after = readText(frame(doc)).values.scale?.length
    if (before && after) moveWithBridge(doc, readText(frame(doc)), after.mm - before.mm, before.mm / 2, units)
  }
  const head = {
    title: options.title ?? `${past.values.title?.value ?? slug}, again`,
    'based-on': slug,
    status: 'idea',
    ...(units === 'in' && !past.values.units && own === 'in' ? {} : {units}),
  }
  return frame(doc, head)
}

/** Of two ways to say one thing, leave out the one that was drawn where the other was measured. */
function dropContradicted(doc: Document, {values}: Build): void {
  const measured = new Set(values.measured?.paths.map(({path}) => path))
  const heights = ['bridge.height', 'action.octave', 'action.nut'].filter((path) =>
    doc.hasIn(path.split('.')),
  )
  const drawn = heights.find((path) => !measured.has(path))
  if (heights.length === 3 && drawn && heights.some((path) => measured.has(path)))
    doc.deleteIn(drawn.split('.'))
  if (
    measured.has('neck.thickness') &&
    !measured.has('neck.above-top') &&
    values.neck?.joins?.value !== 'through'
  )
    doc.deleteIn(['neck', 'above-top'])
  const moved = ['scale.length', 'scale', 'box.length', 'bridge.from-tail'].some((path) => measured.has(path))
  if (moved && !measured.has('box.at') && doc.hasIn(['bridge', 'from-tail'])) doc.deleteIn(['box', 'at'])
  if (measured.has('box.at') && !measured.has('bridge.from-tail')) doc.deleteIn(['bridge', 'from-tail'])
}

/** Write the document between its fences; given new keys, they stand first, and a blank journal below. */
function frame(doc: Document, head?: Record<string, string>): string {
  for (const key of Object.keys(head ?? {})) doc.delete(key)
  const written = {lineWidth: 0, flowCollectionPadding: false}
  const isEmpty = (doc.contents as unknown as YAMLMap).items.length === 0
  const lines = head ? stringify(head, written) : ''
  return `---\n${lines}${isEmpty ? '' : doc.toString(written)}---\n${head ? blankJournal : ''}`
}

const blankJournal = `
<!-- What should be different this time? A heading that starts with a date begins a day,
and its hours may stand in brackets at its end: ## 2026-03-07 Milling the strips (1 h 30 min) -->
`

function noteToNumber(path: string, {values}: Build): string {
  const note = /^strings\.([^.]+)\./.exec(path)?.[1]
  if (!note || /^\d+$/.test(note)) return path
  const index = values.strings?.findIndex((string) => string.note?.name === note) ?? -1
  return path.replace(note, String(index + 1))
}

/** Set the text at a path; a short form on the way is written out first. Remarks stay. */
function setText(doc: Document, path: string, text: string): void {
  const keys = path.split('.')
  let kind: Kind = buildSchema as unknown as Kind
  const at: (string | number)[] = []
  for (const [i, key] of keys.entries()) {
    const node = at.length ? (doc.getIn(at, true) as Node | undefined) : (doc.contents as Node)
    if (kind.is === 'list') {
      kind = kind.item
      if (isSeq(node)) at.push(Number(key) - 1)
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

function writtenOut(doc: Document, node: Scalar, kind: Extract<Kind, {is: 'record'}>): Node {
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

/** Move whatever stands at or past the octave along with the bridge: the box, and what is measured from it. */
function moveWithBridge(doc: Document, build: Build, byMm: number, fromMm: number, units: 'in' | 'mm'): void {
  const ruler = {units, rulerMm: units === 'in' ? 25.4 / 64 : 0.1}
  const move = (path: string, value: Length | undefined) => {
    if (value) setText(doc, path, writeLength(value.mm + byMm, ruler).replace(/ (in|mm)$/, ''))
  }
  for (const [path, value] of stations(build.values)) if (value.mm >= fromMm - 0.5) move(path, value)
  move('neck.length', build.values.neck?.length)
}

const isStation = /^(?!tuners)(?:.*\.)?(?:at|from|to)(?:\.\d+)?$/

/** List the lengths that are places from the nut line, with their paths. */
function stations(tree: unknown, path = ''): [string, Length][] {
  if (typeof tree !== 'object' || tree === null) return []
  if ('place' in tree) return 'mm' in tree && isStation.test(path) ? [[path, tree as Length]] : []
  const isList = Array.isArray(tree)
  return Object.entries(tree).flatMap(([key, value]) =>
    stations(value, [path, isList ? String(Number(key) + 1) : key].filter(Boolean).join('.')),
  )
}
