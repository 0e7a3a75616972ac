import {isAlias, isMap, isScalar, isSeq, type Node, type Pair, type Scalar} from 'yaml'
import {
  type Choice,
  type Either,
  exampleOf,
  type Kind,
  type Leaf,
  type ListOf,
  type RecordOf,
} from './kinds.ts'
import {nearest} from './nearest.ts'
import type {Place, Problem} from './problem.ts'
import {readLeaf} from './quantities/read-leaf.ts'
import {whyOf} from './quantities/reading.ts'
import {readMap, readMeasured} from './read-map.ts'
import {readRecord} from './read-record.ts'
import {type ReaderRule, readerRules} from './rules.ts'
import type {YamlTree} from './yaml-tree.ts'

/** What the reader of values carries along: units, places found so far, and where problems go. */
export interface ReadingContext {
  targetOf: YamlTree['targetOf']
  units: 'in' | 'mm'
  placeOf: YamlTree['placeOf']
  /** By paths with makers' own words in them: without a prototype. */
  places: Record<string, Place>
  keys: Record<string, Place>
  problems: Problem<ReaderRule>[]
  /** What the problems are about, for whoever looks for what was meant. */
  slips: Slip[]
  /** The lists in which something could not be read. */
  lists: {node: Node; kind: ListOf<Kind>; path: string}[]
  /** The short forms of records in which something could not be read. */
  records: {node: Scalar; kind: RecordOf; path: string}[]
}

/** What a problem of reading is about. */
export interface Slip {
  problem: Problem<ReaderRule>
  /** The message without what would do. */
  why: string
  path: string
  /** What was to be read, and as what. */
  node?: Node | null | undefined
  kind?: Kind | undefined
  /** The text of a leaf, where it is part of a longer one. */
  text?: string | undefined
  /** The mapping and the key, where the slip is in a key. */
  map?: {items: readonly Pair[]; flow?: boolean | undefined} | undefined
  key?: Node | undefined
}

/** More problems than this of one file are nothing that somebody reads. */
const mostProblems = 100

/** Say whether a file has so many problems that no more are told, so that none need be looked into. */
export const isFull = ({problems}: ReadingContext): boolean => problems.length > mostProblems

/** Report a problem of a rule, with the rule's own severity; past the last that is told, say once that there are more. */
export function report(
  context: ReadingContext,
  rule: ReaderRule,
  place: Place,
  message: string,
  more: {expected?: string[] | undefined; cause?: Place | undefined; about?: Partial<Slip>} = {},
): void {
  if (isFull(context)) return
  if (context.problems.length === mostProblems) {
    const told = `more than ${mostProblems} problems: those from here on are not told`
    context.problems.push({rule: 'too-many-problems', severity: 'error', ...place, message: told})
    return
  }
  const problem: Problem<ReaderRule> = {
    rule,
    severity: readerRules[rule].severity,
    ...place,
    message,
    expected: more.expected?.length ? more.expected : undefined,
    cause: more.cause && {line: more.cause.line, column: more.cause.column},
  }
  context.problems.push(problem)
  if (more.about) context.slips.push({path: '', why: message, ...more.about, problem})
}

type Read<K> = (node: Node, kind: K, path: string, context: ReadingContext) => unknown

/**
 * Read a node of the YAML as a kind of the schema; `undefined` where it is empty or cannot be read.
 * Every slip is reported at its place, and reading goes on.
 */
export const readValue: Read<Kind> = (node, kind, path, context) => {
  const value = isAlias(node) ? context.targetOf(node) : node
  if (!value || (isScalar(value) && value.value === null)) return undefined
  context.places[path] ??= context.placeOf(node)
  switch (kind.is) {
    case 'leaf':
      return readScalar(value, kind, path, context)
    case 'choice':
      return readChoice(value, kind, path, context)
    case 'list':
      return readList(value, kind, path, context)
    case 'record':
      return readRecord(value, kind, path, context)
    case 'map':
      return readMap(value, kind, path, context)
    case 'either':
      return readEither(value, kind, path, context)
    case 'measured':
      return readMeasured(value, path, context)
  }
}

/** The text of a scalar as the file has it; a number keeps its own spelling. */
export const textOf = (node: Scalar): string =>
  (typeof node.value === 'string' ? node.value : (node.source ?? String(node.value))).trim()

const readScalar: Read<Leaf> = (node, kind, path, context) => {
  if (!isScalar(node)) return wrongShape(node, kind, path, context)
  return readText(node, textOf(node), kind, {path, context})
}

/** Read a text, or part of one, as a leaf, and say at the leaf's place what would do. */
export function readText(
  node: Scalar,
  text: string,
  kind: Leaf,
  {path, context}: {path: string; context: ReadingContext},
): unknown {
  const raw = typeof node.value === 'boolean' ? node.value : text
  const reading = readLeaf(kind.leaf, raw, {units: context.units, limits: kind.limits})
  if (reading.ok) {
    if (kind.leaf === 'text') {
      askOfHash(node, text, {path, context})
      askOfEnd(node, text, {path, context})
    }
    if (/^[“”„«].*[“”»]$/s.test(text))
      report(context, 'quotes-curly', context.places[path]!, curly(path), {
        about: {path, node, kind, text, why: curly(path)},
      })
    return {...reading.value, text, place: context.places[path]}
  }
  report(context, reading.rule, context.places[path]!, `${nameOf(path)}: ${reading.message}`, {
    expected: reading.expected,
    about: {path, node, kind, text, why: `${nameOf(path)}: ${whyOf(reading)}`},
  })
  return undefined
}

/** Ask whether a remark that starts with a figure was meant as part of the text: `Needle box #2`. */
function askOfHash(
  node: Scalar,
  text: string,
  {path, context}: {path: string; context: ReadingContext},
): void {
  if (node.type !== 'PLAIN' || !/^\d/.test(node.comment ?? '')) return
  const place = context.placeOf(node, 0, node.range![1] - node.range![0] + ` #${node.comment}`.length)
  const whole = JSON.stringify(`${text} #${node.comment}`.replace(/^[“”„«]|[“”»]$/g, ''))
  const why = `${nameOf(path)}: a # after a blank starts a remark, and what follows it is not part of the text`
  report(context, 'hash-in-text', place, `${why}; ${whole} would do`, {expected: [whole]})
}

/** Ask whether a comma at the end of a line was meant as part of the text: `title: Needle box,`. */
function askOfEnd(
  node: Scalar,
  text: string,
  {path, context}: {path: string; context: ReadingContext},
): void {
  const [bare = ''] = /^.*?(?=\s*[,;]+$)/s.exec(text) ?? []
  const isTold = context.problems.at(-1)?.rule === 'list-without-brackets'
  if (node.type !== 'PLAIN' || bare === '' || isTold) return
  const why = `${nameOf(path)}: the text ends in ${/,$/.test(text) ? 'a comma' : 'a semicolon'}`
  const expected = [bare, JSON.stringify(text)]
  report(context, 'comma-at-end', context.places[path]!, `${why}; ${expected.join(' or ')} would do`, {
    expected,
  })
}

const curly = (path: string): string =>
  `${nameOf(path)}: curly quotation marks are part of the text; straight ones round a text are not`

const readChoice: Read<Choice> = (node, kind, path, context) => {
  if (!isScalar(node)) return wrongShape(node, kind, path, context)
  const text = textOf(node)
  const said = text.toLowerCase()
  if (kind.of.includes(said)) return {value: said, text, place: context.places[path]}
  const close = nearest(said, kind.of)
  report(
    context,
    'unknown-choice',
    context.places[path]!,
    `${nameOf(path)}: "${text}" is not one of ${kind.of.join(', ')}${close ? `; was ${close} meant?` : ''}`,
    {
      expected: close ? [close] : [...kind.of],
      about: {path, node, kind, text, why: `${nameOf(path)}: "${text}" is not one of ${kind.of.join(', ')}`},
    },
  )
  return undefined
}

const readList: Read<ListOf<Kind>> = (node, kind, path, context) => {
  if (kind.countable && isScalar(node) && /^-?\d+$/.test(textOf(node)))
    return countedItems(Number(textOf(node)), kind, path, context)
  // A lone value stands for a list of one; its item has the list's own place.
  const items = isSeq(node) ? (node.items as Node[]) : [node]
  const most = kind.length ?? kind.most
  if (
    (kind.length && items.length !== kind.length) ||
    (most && items.length > most) ||
    (kind.countable && items.length === 0)
  ) {
    const wanted = kind.length
      ? `exactly ${kind.length}`
      : kind.countable && items.length === 0
        ? 'at least one'
        : `at most ${most}`
    const message = `${nameOf(path)}: ${items.length} given, where ${wanted} can be${isSeq(node) ? '' : '; write them in square brackets, with commas between'}`
    report(context, 'out-of-range', context.places[path]!, message, {
      about: {path, node, kind, why: message},
    })
    return undefined
  }
  if (isScalar(node) && kind.item.is === 'leaf' && kind.item.leaf === 'text') askOfCommas(node, path, context)
  const before = context.problems.length
  const read = items.map((item, i) => readValue(item, kind.item, `${path}.${i + 1}`, context))
  if (context.problems.length > before) context.lists.push({node, kind, path})
  return kind.item.is === 'record'
    ? read.map((item) => item ?? {})
    : read.filter((item) => item !== undefined)
}

/** Ask whether a text with commas was meant as a list: `tags: evening, harbour`. */
function askOfCommas(node: Scalar, path: string, context: ReadingContext): void {
  const text = textOf(node)
  const items = text.replace(/[,;\s]+$/, '')
  const isList = /^[^,[\]{}:#"“”]+(,[^,[\]{}:#"“”]+)+$/.test(items) && items.split(',').every(isName)
  if (node.type !== 'PLAIN' || !isList) return
  const why = `${nameOf(path)}: without brackets this is one text; a list stands in square brackets`
  const expected = [`[${items}]`, JSON.stringify(text)]
  report(context, 'list-without-brackets', context.places[path]!, `${why}, as in ${expected[0]}`, {expected})
}

/** A sentence has more words than this. */
const isName = (text: string): boolean => text.trim() !== '' && text.trim().split(/\s+/).length <= 3

function countedItems(count: number, kind: ListOf<Kind>, path: string, context: ReadingContext): unknown {
  if (count >= 1 && count <= (kind.most ?? 12)) return Array.from({length: count}, () => ({}))
  report(
    context,
    'out-of-range',
    context.places[path]!,
    `${nameOf(path)}: ${count} given, where 1 to ${kind.most ?? 12} can be`,
  )
  return undefined
}

const readEither: Read<Either<Kind, Kind>> = (node, kind, path, context) => {
  const tries = [kind.first, kind.second].map((each) => {
    const trial: ReadingContext = {...context, problems: [], slips: [], lists: [], records: []}
    return {value: readValue(node, each, path, trial), ...trial}
  })
  const good = tries.find((each) => each.problems.length === 0)
  if (good) return good.value
  // Neither fits: the one of the written shape explains best.
  const words = isScalar(node) && /^[a-z ]+$/i.test(textOf(node))
  const told = isSeq(node) || (kind.second.is === 'leaf' && !words) ? tries[1]! : tries[0]!
  context.problems.push(...told.problems)
  // What was meant may be of either kind.
  context.slips.push(...told.slips.map((slip) => (slip.path === path ? {...slip, kind} : slip)))
  context.lists.push(...told.lists)
  context.records.push(...told.records)
  return told.value
}

/** Say that a value has the wrong shape, with an example of the right one. */
export function wrongShape(node: Node, kind: Kind, path: string, context: ReadingContext): undefined {
  const is = isMap(node) ? 'keys with values' : isSeq(node) ? 'a list' : `"${textOf(node as Scalar)}"`
  const why = `${nameOf(path)}: ${is} stands where ${exampleOf(kind)} belongs`
  report(context, 'wrong-shape', context.places[path]!, why, {about: {path, node, kind, why}})
  return undefined
}

/** A path as a maker reads it: the last key, with the number of its list item where there is one. */
export const nameOf = (path: string): string => path.replace(/\.(\d+)(?=\.|$)/g, ' $1').replaceAll('.', ' ')
