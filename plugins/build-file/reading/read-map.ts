import {isAlias, isMap, isScalar, isSeq, type Node, type Scalar} from 'yaml'
import {readLeaf} from '../quantities/read-leaf.ts'
import {whatWouldDo, whyOf} from '../quantities/reading.ts'
import {
  date,
  force,
  type Kind,
  type Leaf,
  label as labelKind,
  length,
  type MapOf,
  number,
} from '../schema/kinds.ts'
import {nearest} from '../schema/nearest.ts'
import {leafAt, quantityPaths} from '../schema/path.ts'
import type {Day, Force, Length, MeasuredDay, MeasuredValues, Numeral} from '../schema/values.ts'
import {pairsOf} from './read-record.ts'
import {isFull, nameOf, type ReadingContext, report, textOf, wrongShape} from './reading-context.ts'

/** Scores of one day; each is a column of the table. */
const mostScores = 10

/** Read a mapping whose keys are the maker's own: rule names, line labels, paths, scores. */
export function readMap(
  node: Node,
  kind: MapOf<Kind>,
  path: string,
  context: ReadingContext,
): Record<string, unknown> | undefined {
  if (!isMap(node)) return wrongShape(node, kind, path, context)
  // Without a prototype, whose keys would else be set instead of the maker's.
  const read: Record<string, unknown> = Object.create(null)
  for (const {key, name, value} of pairsOf(
    node,
    path,
    context,
    kind.keys === 'score' ? mostScores : undefined,
  )) {
    const of = kind.keys === 'path' ? howFarOff(quantityKind(name, key, context)) : kind.value
    const got = of && value ? context.readValue(value, of, `${path}.${name}`, context) : undefined
    if (got !== undefined) read[name] = got
  }
  return read
}

/** How far a value may be off is far smaller than the value itself may be. */
function howFarOff(leaf: Leaf | undefined): Leaf | undefined {
  return leaf && {...leaf, limits: {...(leaf.limits.max !== undefined && {max: leaf.limits.max}), min: 0}}
}

const allQuantityPaths = quantityPaths()

function quantityKind(name: string, key: Node, context: ReadingContext): Leaf | undefined {
  const leaf = leafAt(name)
  if (leaf && leaf.leaf !== 'text' && leaf.leaf !== 'wood' && leaf.leaf !== 'flag') return leaf
  if (isFull(context)) return undefined
  const close = nearest(name, allQuantityPaths)
  const why = `${name} is not the path of a measure in this file`
  report(
    context,
    {rule: 'unknown-key', place: context.placeOf(key)},
    `${why}${close ? `; was ${close} meant?` : ''}`,
    {
      expected: close ? [close] : undefined,
      about: {path: name, key, why},
    },
  )
  return undefined
}

const frequency = number('Hertz, tapped with the holes open.', {min: 10, max: 5000})
const lineStation = length('From the nut line.', {max: 3000})
const lineLabel = labelKind('The line.')
const lineCents = number('Read off a tuner.', {min: -1200, max: 1200})

/** Days of measuring: more than these are no list that somebody wrote. */
const mostDays = 200

/** Read what was measured: one record, or a list of such, each of its own day; in the order of their days. */
export function readMeasured(node: Node, path: string, context: ReadingContext): MeasuredValues | undefined {
  if (!isSeq(node)) {
    const day = readMeasuredDay(node, path, context)
    return day && {on: day.on, days: [day]}
  }
  if (node.items.length > mostDays) {
    const why = `${nameOf(path)}: ${node.items.length} given, where at most ${mostDays} can be`
    report(context, {rule: 'out-of-range', place: context.places[path]!}, why, {about: {path, node, why}})
    return undefined
  }
  const read = (node.items as Node[]).flatMap((item, i) => {
    const own = `${path}.${i + 1}`
    const value = isAlias(item) ? context.targetOf(item) : item
    if (!value || (isScalar(value) && value.value === null)) return []
    context.places[own] ??= context.placeOf(item)
    return readMeasuredDay(value, own, context) ?? []
  })
  const days = read.sort((a, b) =>
    (a.on?.iso ?? '') < (b.on?.iso ?? '') ? -1 : a.on?.iso === b.on?.iso ? 0 : 1,
  )
  return {on: days.at(-1)?.on, days}
}

/** Read the as-built values: `on`, `lines`, `cents`, `resonance`, strings' tensions, and paths of the front matter. */
function readMeasuredDay(node: Node, path: string, context: ReadingContext): MeasuredDay | undefined {
  if (!isMap(node)) return wrongShape(node, {is: 'measured', says: ''}, path, context)
  const read: MeasuredDay = {of: path, lines: [], cents: [], tensions: [], paths: []}
  for (const {key, name, value} of pairsOf(node, path, context)) {
    if (!value || (isScalar(value) && value.value === null)) continue
    const own = `${path}.${name}`
    const tension = /^strings\.(.+)\.tension$/.exec(name)
    if (name === 'on')
      setIfRead(
        context.readValue(value, date('The day it was measured.'), own, context) as Day | undefined,
        (on) => (read.on = on),
      )
    else if (name === 'resonance')
      setIfRead(
        context.readValue(withoutHertz(value), frequency, own, context) as Numeral | undefined,
        (it) => (read.resonance = it),
      )
    else if (name === 'lines') read.lines.push(...byLabel<Length>(value, lineStation, own, context))
    else if (name === 'cents') read.cents.push(...byLabel<Numeral>(value, lineCents, own, context))
    else if (tension)
      setIfRead(
        context.readValue(value, force('The pull.', {min: 1, max: 2000}), own, context) as Force | undefined,
        (it) => read.tensions.push({name: tension[1]!, value: it}),
      )
    else {
      const leaf = quantityKind(name, key, context)
      if (leaf)
        setIfRead(context.readValue(value, leaf, own, context), (it) =>
          read.paths.push({path: name, value: it as MeasuredDay['paths'][number]['value']}),
        )
    }
  }
  return read
}

function setIfRead<T>(value: T | undefined, set: (value: T) => void): void {
  if (value !== undefined) set(value)
}

/** A maker may well write the unit. */
function withoutHertz(node: Node): Node {
  if (isScalar(node) && typeof node.value === 'string') node.value = node.value.replace(/\s*hz$/i, '')
  return node
}

function byLabel<T>(
  node: Node,
  kind: Leaf,
  path: string,
  context: ReadingContext,
): {label: string; value: T}[] {
  if (!isMap(node)) {
    context.places[path] ??= context.placeOf(node)
    wrongShape(node, {is: 'measured', says: ''}, path, context)
    return []
  }
  const read: {label: string; value: T}[] = []
  const bare = node.items.filter(({value}) => value === null)
  if (node.flow && bare.length > 0 && bare.length === node.items.length) {
    const names = bare.map(({key}) => textOf(key as Scalar))
    const expected = names.length === 2 ? [`{${names.join(': ')}}`] : []
    const why = `${nameOf(path)}: between a line and what was measured there stands a colon`
    context.places[path] ??= context.placeOf(node)
    report(context, {rule: 'wrong-shape', place: context.places[path]!}, why + whatWouldDo(expected), {
      expected,
    })
    return read
  }
  for (const {key, name, value} of pairsOf(node, path, context)) {
    const label = readLeaf('label', name, {units: context.units, limits: {}})
    if (!label.ok)
      report(context, {rule: label.rule, place: context.placeOf(key)}, `${nameOf(path)}: ${label.message}`, {
        expected: label.expected,
        about: {path, node: key, kind: lineLabel, text: name, why: `${nameOf(path)}: ${whyOf(label)}`},
      })
    else if (value) {
      const got = context.readValue(value, kind, `${path}.${name}`, context)
      if (got !== undefined) read.push({label: label.value.label, value: got as T})
    }
  }
  return read
}
