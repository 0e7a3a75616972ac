import type {Build} from './build.ts'
import type {Kind, Leaf} from './kinds.ts'
import {type Place, wholeFile} from './problem.ts'
import {buildSchema} from './schema.ts'
import type {Pitch, Written} from './values.ts'

/*
 * A dotted path names a value of the front matter: `neck.laminations.1.thickness`. Lists count from 1, and a string
 * may be named by its note: `strings.D4.gauge`.
 */

/**
 * Look a word up among a record's own keys. Makers' words are looked up so and no other way: every object knows
 * `constructor`, and a maker may have a rule, a score or a path of that name.
 */
export function ownAt<T>(record: Readonly<Record<string, T>> | undefined, key: string): T | undefined {
  const found = record?.[key]
  return found !== undefined && Object.hasOwn(record!, key) ? found : undefined
}

/** Tell whether something that was read is a value; a record, also one with keys of the maker's own, is none. */
export const isWritten = (value: object): value is Written => typeof (value as Written).text === 'string'

/**
 * Put to a value that was read how and where it is written. (Values have many shapes, and a spread of ever other shapes
 * is several times slower than this loop.)
 */
export function writtenAs<T extends Written>(read: object, as: T): T {
  const own = copyOf(read) as Tree
  for (const key in as) own[key] = as[key]
  return own as unknown as T
}

/** Find what stands at a dotted path of a build's values: a value, a record or a list; undefined where nothing does. */
export function valueAt(values: object, path: string): unknown {
  return valueBelow(values, path.split('.'))
}

/** Find what stands at the steps of a dotted path, where that has been taken apart already. */
export function valueBelow(values: object, steps: readonly string[]): unknown {
  let at: unknown = values
  for (const step of steps) {
    if (typeof at !== 'object' || at === null) return undefined
    at = ownAt(at as Tree, keyOf(at, step))
  }
  return at
}

/** Find how the value at a path is written; undefined where there is none, or a record. */
export const textAt = (values: object, path: string): string | undefined =>
  (valueAt(values, path) as Partial<Written> | undefined)?.text

/** Set a value at a path in a copy; the values given stay as they are, and share with the copy what is not on the way. */
export function withValueAt<T extends object>(values: T, path: string, value: unknown): T {
  const copy = copyOf(values)
  setterOf(copy)(path, value)
  return copy
}

/**
 * Give the way to set values at paths of values that nobody else holds. Records and lists below may be shared, and are
 * copied, each once.
 */
export function setterOf(values: object): (path: string, value: unknown) => void {
  const own = new Set([values])
  return (path, value) => {
    const steps = path.split('.')
    const last = steps.pop()!
    let at = values as Tree
    for (const step of steps) {
      const key = keyOf(at, step)
      let below = (at[key] as object | undefined) ?? {}
      if (!own.has(below)) {
        below = copyOf(below)
        own.add(below)
        at[key] = below
      }
      at = below as Tree
    }
    at[keyOf(at, last)] = value
  }
}

function copyOf<T extends object>(values: T): T {
  if (Array.isArray(values)) return [...values] as unknown as T
  const copy: Tree = {}
  for (const key in values) copy[key] = values[key]
  return copy as T
}

/** List all that was read below some values, each with its path. */
export function leavesOf(values: unknown, path = ''): [path: string, value: Written][] {
  if (typeof values !== 'object' || values === null) return []
  if (isWritten(values)) return [[path, values]]
  const isList = Array.isArray(values)
  return Object.entries(values).flatMap(([key, value]) =>
    leavesOf(value, joined(path, isList ? String(Number(key) + 1) : key)),
  )
}

/** Tell whether what stands at a path, or anything of it, is proposed and not the file's. */
export const proposedAt = (values: object, path: string): true | undefined =>
  isProposed(valueAt(values, path)) || undefined

function isProposed(values: unknown): boolean {
  if (typeof values !== 'object' || values === null) return false
  return isWritten(values) ? values.proposed === true : Object.values(values).some(isProposed)
}

/** Name the strings by their notes, a second one of a note `D4-2`; one without a note by its number. */
export function stringNames(strings: readonly {note?: Pick<Pitch, 'name'>}[] = []): string[] {
  const seen = new Map<string, number>()
  return strings.map(({note}, at) => {
    const name = note?.name ?? String(at + 1)
    const count = (seen.get(name) ?? 0) + 1
    seen.set(name, count)
    return count === 1 ? name : `${name}-${count}`
  })
}

type Tree = Record<string, unknown>

const joined = (path: string, step: string): string => (path ? `${path}.${step}` : step)

/** Give the property that a step of a path names in a record or a list. */
function keyOf(at: object, step: string): string {
  if (!Array.isArray(at)) return step
  return String(/^\d+$/.test(step) ? Number(step) - 1 : stringNames(at).indexOf(step))
}

/**
 * Find what the schema says at a dotted path (`neck.laminations.1.thickness`; a string also by its note,
 * `strings.D4.gauge`). A record that one value may stand for counts as that value: `neck.width`.
 */
export function kindAt(path: string, kind: Kind = buildSchema): Kind | undefined {
  if (path === '') return kind
  if (kind.is === 'either') return kindAt(path, kind.first) ?? kindAt(path, kind.second)
  const dot = path.indexOf('.')
  const [head, tail] = dot < 0 ? [path, ''] : [path.slice(0, dot), path.slice(dot + 1)]
  if (kind.is === 'record')
    return Object.hasOwn(kind.fields, head) ? kindAt(tail, kind.fields[head]) : undefined
  if (kind.is === 'list') return kindAt(tail, kind.item)
  return undefined
}

/** Find the leaf that a path, or a record's one short value, stands for. */
export function leafAt(path: string): Leaf | undefined {
  return leafOf(kindAt(path))
}

function leafOf(kind: Kind | undefined): Leaf | undefined {
  if (kind?.is === 'leaf') return kind
  if (kind?.is === 'record' && kind.short?.keys.length === 1) return leafOf(kind.fields[kind.short.keys[0]!])
  if (kind?.is === 'either') return leafOf(kind.first) ?? leafOf(kind.second)
  return undefined
}

/** List every path of the schema that holds one quantity, list items as `1`. */
export function quantityPaths(kind: Kind = buildSchema, path = ''): string[] {
  if (kind.is === 'leaf')
    return kind.leaf === 'text' || kind.leaf === 'wood' || kind.leaf === 'flag' ? [] : [path]
  if (kind.is === 'record') {
    const own = leafOf(kind) && path ? [path] : []
    return [
      ...own,
      ...Object.entries(kind.fields).flatMap(([key, field]) => quantityPaths(field, joined(path, key))),
    ]
  }
  if (kind.is === 'list') return quantityPaths(kind.item, `${path}.1`)
  if (kind.is === 'either') return [...quantityPaths(kind.first, path), ...quantityPaths(kind.second, path)]
  return []
}

/**
 * Find the place of the value at a dotted path (`strings.1.gauge`), or, where the file does not have it,
 * that of the nearest key around it; the start of the file if there is none.
 */
export function placeOf(build: Build, path: string): Place {
  const own = ownAt(build.places, path)
  if (own) return own
  for (let around = path; around.includes('.'); ) {
    around = around.slice(0, around.lastIndexOf('.'))
    const place = ownAt(build.keys, around) ?? ownAt(build.places, around)
    if (place) return place
  }
  return ownAt(build.keys, 'title') ?? wholeFile
}

/** Find the path under a key whose value stands at a place, where the key's own spelling is not kept. */
export function pathAt({places}: Build, under: string, {line, column}: Place): string | undefined {
  return Object.keys(places).find((path) => {
    const place = places[path]!
    return path.startsWith(`${under}.`) && place.line === line && place.column === column
  })
}
