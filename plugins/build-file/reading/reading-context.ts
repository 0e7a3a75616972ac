import {isMap, isSeq, type Node, type Pair, type Scalar} from 'yaml'
import {readLeaf} from '../quantities/read-leaf.ts'
import {whyOf} from '../quantities/reading.ts'
import {type ReaderRule, readerRules} from '../rules/rules.ts'
import {exampleOf, type Kind, type Leaf, type ListOf, type RecordOf} from '../schema/kinds.ts'
import {writtenAs} from '../schema/path.ts'
import type {Place, Problem} from '../schema/problem.ts'
import type {YamlTree} from '../yaml/yaml-tree.ts'

/** What the reader of values carries along: units, places found so far, and where problems go. */
export interface ReadingContext {
  /** Reads a node as any kind: what holds others reads them by it. */
  readValue: Read<Kind>
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

/** Begin a reading in which nothing is found yet. */
export const beginReading = (
  by: Pick<ReadingContext, 'readValue' | 'targetOf' | 'placeOf' | 'units'>,
): ReadingContext => ({
  readValue: by.readValue,
  targetOf: by.targetOf,
  placeOf: by.placeOf,
  units: by.units,
  places: Object.create(null),
  keys: Object.create(null),
  problems: [],
  slips: [],
  lists: [],
  records: [],
})

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
  {rule, place}: {rule: ReaderRule; place: Place},
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

/** Reads a node of the YAML as a kind of the schema. */
export type Read<K> = (node: Node, kind: K, path: string, context: ReadingContext) => unknown

/** The text of a scalar as the file has it; a number keeps its own spelling. */
export const textOf = (node: Scalar): string =>
  (typeof node.value === 'string' ? node.value : (node.source ?? String(node.value))).trim()

/** Say that a value has the wrong shape, with an example of the right one. */
export function wrongShape(node: Node, kind: Kind, path: string, context: ReadingContext): undefined {
  const is = isMap(node) ? 'keys with values' : isSeq(node) ? 'a list' : `"${textOf(node as Scalar)}"`
  const why = `${nameOf(path)}: ${is} stands where ${exampleOf(kind)} belongs`
  report(context, {rule: 'wrong-shape', place: context.places[path]!}, why, {about: {path, node, kind, why}})
  return undefined
}

/** A path as a maker reads it: the last key, with the number of its list item where there is one. */
export const nameOf = (path: string): string => path.replace(/\.(\d+)(?=\.|$)/g, ' $1').replaceAll('.', ' ')

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
      report(context, {rule: 'quotes-curly', place: context.places[path]!}, curly(path), {
        about: {path, node, kind, text, why: curly(path)},
      })
    return writtenAs(reading.value, {text, place: context.places[path]!})
  }
  report(context, {rule: reading.rule, place: context.places[path]!}, `${nameOf(path)}: ${reading.message}`, {
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
  report(context, {rule: 'hash-in-text', place}, `${why}; ${whole} would do`, {expected: [whole]})
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
  report(
    context,
    {rule: 'comma-at-end', place: context.places[path]!},
    `${why}; ${expected.join(' or ')} would do`,
    {
      expected,
    },
  )
}

const curly = (path: string): string =>
  `${nameOf(path)}: curly quotation marks are part of the text; straight ones round a text are not`
