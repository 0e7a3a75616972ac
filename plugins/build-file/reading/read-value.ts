import {isAlias, isScalar, isSeq, type Node, type Scalar} from 'yaml'
import type {Choice, Either, Kind, Leaf, ListOf} from '../schema/kinds.ts'
import {nearest} from '../schema/nearest.ts'
import {readMap, readMeasured} from './read-map.ts'
import {readRecord} from './read-record.ts'
import {
  nameOf,
  type Read,
  type ReadingContext,
  readText,
  report,
  textOf,
  wrongShape,
} from './reading-context.ts'

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

const readScalar: Read<Leaf> = (node, kind, path, context) => {
  if (!isScalar(node)) return wrongShape(node, kind, path, context)
  return readText(node, textOf(node), kind, {path, context})
}

const readChoice: Read<Choice> = (node, kind, path, context) => {
  if (!isScalar(node)) return wrongShape(node, kind, path, context)
  const text = textOf(node)
  const said = text.toLowerCase()
  if (kind.of.includes(said)) return {value: said, text, place: context.places[path]}
  const close = nearest(said, kind.of)
  report(
    context,
    {rule: 'unknown-choice', place: context.places[path]!},
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
    report(context, {rule: 'out-of-range', place: context.places[path]!}, message, {
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
  report(
    context,
    {rule: 'list-without-brackets', place: context.places[path]!},
    `${why}, as in ${expected[0]}`,
    {expected},
  )
}

/** A sentence has more words than this. */
const isName = (text: string): boolean => text.trim() !== '' && text.trim().split(/\s+/).length <= 3

function countedItems(count: number, kind: ListOf<Kind>, path: string, context: ReadingContext): unknown {
  if (count >= 1 && count <= (kind.most ?? 12)) return Array.from({length: count}, () => ({}))
  report(
    context,
    {rule: 'out-of-range', place: context.places[path]!},
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
