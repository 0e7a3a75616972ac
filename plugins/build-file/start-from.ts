import {type Document, isCollection, isMap, isScalar, type Node, parseDocument, stringify} from 'yaml'
import {fineRulers, writeBare} from './quantities/write-length.ts'
import {readBuild} from './read.ts'
import {plainLines, splitFrontMatter} from './reading/front-matter.ts'
import {asMade} from './schema/as-made.ts'
import type {Build} from './schema/build.ts'
import {leavesOf, stringNames} from './schema/path.ts'
import type {BuildValues, JournalSettings} from './schema/schema.ts'
import type {Length} from './schema/values.ts'
import {deleteAt, hasAt, setText, stepsOf, writePlainly} from './writing/edit-yaml.ts'
import {giveUnits, withUnit} from './writing/give-units.ts'
import {yamlTree} from './yaml/yaml-tree.ts'

/** What belongs to the instrument that was made, and not to its dimensions. */
export const ofTheMade = [
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
  'for-sale',
  'stock',
  'take',
] as const

interface StartOptions {
  journal?: JournalSettings
  title?: string
  /** Another scale length, as a maker writes it; whatever lies past the octave keeps its distance from the bridge. */
  scale?: string
  units?: 'in' | 'mm'
  /** Paths whose measures the setting up called for mending: there the copy is as planned. */
  mended?: readonly string[]
}

/**
 * Write a build file that starts from a past build: its dimensions, as measured where they were measured and not to be
 * mended, with the remarks beside them and the day of each measure; without its days, photographs, recordings, scores,
 * measurements, dates, cost and stock. Undefined where the past build's front matter cannot be read.
 */
export function startFrom(source: string, slug: string, options: StartOptions = {}): string | undefined {
  const {journal} = options
  const readText = (text: string) => readBuild(text, {slug, journal}).build
  const plain = writtenPlainly(source)
  if (plain === undefined) return undefined
  const past = readText(plain.text)
  const own = past.values.units?.value ?? journal?.units?.value ?? 'in'
  const units = options.units ?? own
  const doc = units === own ? plain.doc : documentOf(giveUnits(plain.text, past, own))
  doc.contents ??= doc.createNode({})

  const {mended = []} = options
  const made = asMade(past.values, mended).map((one) => ({...one, path: byNumber(one.path, past.values)}))
  const textOf = ({value}: (typeof made)[number]) =>
    units !== own && 'mm' in value ? withUnit(value, own) : value.text
  for (const one of made) setText(doc, one.path, textOf(one))
  // Another scale length moves what hangs on it: what was measured stands beside it, and is not what is written.
  const isMoved = (path: string) =>
    options.scale !== undefined && (/^scale(?:\.length)?$/.test(path) || isStation.test(path))
  sayBeside(doc, [
    ...made.map((one) => {
      const says = ['measured', one.on?.iso].filter(Boolean).join(' ')
      return {path: one.path, says: isMoved(one.path) ? `${textOf(one)} on ${slug}, ${says}` : says}
    }),
    ...asMade(past.values)
      .filter(({path}) => mended.includes(path))
      .map(({path, value, on}) => ({
        path,
        says: `as planned, measured ${value.text}${on ? ` on ${on.iso}` : ''} and to be set right`,
      })),
  ])
  dropContradicted(doc, past, new Set(made.map(({path}) => path)))
  for (const key of ofTheMade) doc.delete(key)
  if (options.scale !== undefined) {
    const before = readText(frame(doc)).values.scale?.length
    setText(doc, 'scale.length', options.scale)
    const after = readText(frame(doc)).values.scale?.length
    if (before && after) moveWithBridge(doc, readText(frame(doc)), {before, after, units})
  }
  const head = {
    title: options.title ?? `${past.values.title?.value ?? slug}, again`,
    'based-on': slug,
    status: 'idea',
    ...(units === 'in' && !past.values.units && own === 'in' ? {} : {units}),
  }
  const from = made.length > 0 ? 'what was measured says so, all else is as planned' : 'as planned'
  return frame(doc, head, `# Dimensions of ${slug}: ${from}.\n`)
}

/** Put beside values, or beside the line that they stand in, where they come from. */
function sayBeside(doc: Document, values: readonly {path: string; says: string}[]): void {
  const remarks = new Map<Node, string[]>()
  for (const {path, says} of values) {
    const steps = stepsOf(path)
    let node: unknown = doc.contents
    let at = 0
    for (; isCollection(node) && !node.flow && at < steps.length; at++) node = node.get(steps[at], true)
    if (!isScalar(node) && !isCollection(node)) continue
    const what = [path.split('.').slice(at).join('.'), says].filter(Boolean).join(' ')
    remarks.set(node, [...(remarks.get(node) ?? []), what])
  }
  for (const [node, said] of remarks)
    node.comment = [node.comment?.trimEnd() ?? '', ` ${said.join(', ')}`].filter(Boolean).join(';')
}

/** Write a build's front matter anew, every value of it plainly; undefined where it cannot be read. */
function writtenPlainly(source: string): {text: string; doc: Document} | undefined {
  const {front} = splitFrontMatter(plainLines(source))
  if (!front) return undefined
  const tree = yamlTree(front.yaml, front.firstLine)
  const isReadable = tree.problems.every(({severity}) => severity !== 'error')
  if (!isReadable || !(isMap(tree.doc.contents) || !tree.doc.contents)) return undefined
  writePlainly(tree)
  return {text: frame(tree.doc), doc: tree.doc}
}

/** Parse the front matter of a text that is written plainly. */
function documentOf(text: string): Document {
  return parseDocument(splitFrontMatter(text).front?.yaml ?? '', {uniqueKeys: false})
}

/** Of two ways to say one thing, leave out the one that was drawn where the other was measured. */
function dropContradicted(doc: Document, {values}: Build, measured: ReadonlySet<string>): void {
  const heights = ['bridge.height', 'action.octave', 'action.nut'].filter((path) => hasAt(doc, path))
  const drawn = heights.find((path) => !measured.has(path))
  if (heights.length === 3 && drawn && heights.some((path) => measured.has(path))) deleteAt(doc, drawn)
  if (
    measured.has('neck.thickness') &&
    !measured.has('neck.above-top') &&
    values.neck?.joins?.value !== 'through'
  )
    deleteAt(doc, 'neck.above-top')
  const moved = ['scale.length', 'scale', 'box.length', 'bridge.from-tail'].some((path) => measured.has(path))
  if (moved && !measured.has('box.at') && hasAt(doc, 'bridge.from-tail')) deleteAt(doc, 'box.at')
  if (measured.has('box.at') && !measured.has('bridge.from-tail')) deleteAt(doc, 'bridge.from-tail')
}

/** Write the document between its fences; given new keys, they stand first, and a blank journal below. */
function frame(doc: Document, head?: Record<string, string>, remark = ''): string {
  for (const key of Object.keys(head ?? {})) doc.delete(key)
  const written = {lineWidth: 0, flowCollectionPadding: false}
  const isEmpty = !isMap(doc.contents) || doc.contents.items.length === 0
  const lines = head ? stringify(head, written) + remark : ''
  return `---\n${lines}${isEmpty ? '' : doc.toString(written)}---\n${head ? blankJournal : ''}`
}

const blankJournal = `
<!-- What should be different this time? A heading that starts with a date begins a day,
and its hours may stand in brackets at its end: ## 2026-03-07 Milling the strips (1 h 30 min) -->
`

/** Name a string of a path by its number where its note names it. */
function byNumber(path: string, {strings}: BuildValues): string {
  const [list, string = '', ...rest] = path.split('.')
  const at = list === 'strings' ? stringNames(strings).indexOf(string) : -1
  return at < 0 ? path : [list, at + 1, ...rest].join('.')
}

/**
 * Move whatever stands at or past the octave, or the box's edge where that comes before it, along with the bridge: the
 * box, what is measured from it, and a board that ends there.
 */
function moveWithBridge(
  doc: Document,
  {values}: Build,
  {before, after, units}: {before: Length; after: Length; units: 'in' | 'mm'},
): void {
  const byMm = after.mm - before.mm
  const move = (path: string, value: Length | undefined) => {
    if (value) setText(doc, path, writeBare(value.mm + byMm, fineRulers[units]))
  }
  const {box, bridge} = values
  const tailMm = bridge?.['from-tail'] && before.mm + bridge['from-tail'].mm
  const boxMm = box?.at?.mm ?? (tailMm && box?.length ? tailMm - box.length.mm : before.mm)
  const fromMm = Math.min(before.mm / 2, boxMm) - 0.5
  for (const [path, value] of stations(values)) if (value.mm >= fromMm) move(path, value)
  move('neck.length', values.neck?.length)
}

const isStation = /^(?!tuners)(?:.*\.)?(?:at|from|to)(?:\.\d+)?$/

/** List the lengths that are places from the nut line, with their paths. */
const stations = (values: BuildValues) =>
  leavesOf(values).filter(([path, value]) => 'mm' in value && isStation.test(path)) as [string, Length][]
