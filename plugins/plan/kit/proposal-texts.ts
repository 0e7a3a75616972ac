import {writeBare} from '../../build-file/quantities/write-length.ts'
import type {Build} from '../../build-file/schema/build.ts'
import type {Kind, Leaf} from '../../build-file/schema/kinds.ts'
import {kindAt, ownAt, placeOf, writtenAs} from '../../build-file/schema/path.ts'
import type {Place} from '../../build-file/schema/problem.ts'
import type {BuildValues} from '../../build-file/schema/schema.ts'
import {readOwn} from './own-readings.ts'
import {toMark} from './would-do.ts'

/** Values as the file would have them: a text each, in lists and records. */
export type Texts = string | readonly Texts[] | {readonly [key: string]: Texts}

/** The key under which stands what comes after the items that a list of the file has. */
const more = '+'

/** Items to add to a list of the file, or to make one of. */
export const added = (items: readonly Texts[]): Texts => ({[more]: items})

const itemsToAdd = (texts: Texts): readonly Texts[] | undefined =>
  typeof texts === 'object' && !Array.isArray(texts)
    ? ((texts as {[more]?: readonly Texts[]})[more] ?? undefined)
    : undefined

/** What is written by: the unit of a bare number, and the finest mark. */
interface Ruler {
  units: 'in' | 'mm'
  rulerMm: number
}

/** A length as the file would have it, and what it is read as (mm). */
export interface Written {
  text: string
  mm: number
}

/** Write a place (mm) to a mark of the ruler, never past it on the other side, as it is read again. */
export function markAt(mm: number, ruler: Ruler, side: 'down' | 'up'): Written {
  const marked = writtenMm(toMark(mm, ruler.rulerMm, side), ruler)
  const overMm = side === 'down' ? marked.mm - mm : mm - marked.mm
  // A ruler that divides no inch is written in decimals, which may fall past the mark.
  if (overMm <= 1e-6) return marked
  const backMm = side === 'down' ? -ruler.rulerMm : ruler.rulerMm
  return writtenMm(toMark(mm + backMm, ruler.rulerMm, side), ruler)
}

/** Write a size (mm) as it is sold or bored, whatever the ruler. */
export function sizeOf(inches: string, mm: string, {units}: Pick<Ruler, 'units'>): Written {
  const text = units === 'in' ? inches : mm
  return {text, mm: readMm(text, units)}
}

function writtenMm(mm: number, ruler: Ruler): Written {
  const text = writeBare(mm, ruler)
  return {text, mm: readMm(text, ruler.units)}
}

/** A place may lie on either side of where it is counted from. */
const signedLength: Leaf = {is: 'leaf', leaf: 'length', says: '', limits: {signed: true}}

const readMm = (text: string, units: 'in' | 'mm'): number =>
  (readOwn(signedLength, text, units) as {mm?: number}).mm ?? Number.NaN

/** Read texts as the file's reader would, and put them where a build says nothing; each value says that it is proposed. */
export function withTexts(
  build: Build,
  texts: {readonly [key: string]: Texts},
  units: 'in' | 'mm',
): BuildValues {
  const at = {path: '', kind: kindAt(''), around: placeOf(build, '')}
  return merged(build.values, at, texts, {build, units}) as BuildValues
}

/** List the values among texts, each with its path in a build that has these values; a list of values in one. */
export function leavesOfTexts(texts: Texts, own: unknown, path = ''): [path: string, value: string][] {
  if (typeof texts === 'string') return [[path, texts]]
  const below = (key: string | number) => (path ? `${path}.${key}` : String(key))
  const at = (key: string) => (own as Record<string, unknown> | undefined)?.[key]
  const items = itemsToAdd(texts)
  if (items) {
    const before = Array.isArray(own) ? own.length : 0
    return items.flatMap((item, i) => leavesOfTexts(item, undefined, below(before + i + 1)))
  }
  if (!Array.isArray(texts))
    return Object.entries(texts).flatMap(([key, item]) => leavesOfTexts(item, at(key), below(key)))
  return texts.every((item) => typeof item === 'string')
    ? [[path, texts.join(', ')]]
    : texts.flatMap((item, i) => leavesOfTexts(item, undefined, below(i + 1)))
}

/** Where texts are put: what the schema says there, and the place (placeOf) of the nearest key around. */
interface At {
  path: string
  kind: Kind | undefined
  around: Place
}

interface Reader {
  build: Build
  units: 'in' | 'mm'
}

/** What texts were read as where a build has nothing: what is tried, and then proposed, is read once. */
const known = new WeakMap<
  object,
  {values: unknown; path: string} & Pick<Build, 'places'> & Pick<Reader, 'units'>
>()

function merged(own: unknown, at: At, texts: Texts, reader: Reader): unknown {
  if (typeof texts === 'string') return own ?? readAt(at, texts, reader)
  if (own !== undefined) return mergedBelow(own, at, texts, reader)
  const [{path}, {build, units}] = [at, reader]
  const before = known.get(texts)
  if (before?.path === path && before.places === build.places && before.units === units) return before.values
  const values = mergedBelow(own, at, texts, reader)
  known.set(texts, {values, path, places: build.places, units})
  return values
}

function mergedBelow(own: unknown, at: At, texts: Exclude<Texts, string>, reader: Reader): unknown {
  const {keys, places} = reader.build
  const around = ownAt(keys, at.path) ?? ownAt(places, at.path) ?? at.around
  const below = (step: string): At => ({
    path: at.path ? `${at.path}.${step}` : step,
    kind: at.kind && kindAt(step, at.kind),
    around,
  })
  const items = itemsToAdd(texts)
  if (items) {
    const before = (own as unknown[] | undefined) ?? []
    const more = items.map((item, i) => merged(undefined, below(String(before.length + i + 1)), item, reader))
    return [...before, ...more]
  }
  if (Array.isArray(texts))
    return own ?? texts.map((item, i) => merged(undefined, below(String(i + 1)), item, reader))
  const record = {...(own as Record<string, unknown> | undefined)}
  for (const [key, item] of Object.entries(texts)) record[key] = merged(record[key], below(key), item, reader)
  return record
}

function readAt({path, kind, around}: At, text: string, {build, units}: Reader): object {
  const place = ownAt(build.places, path) ?? around
  return writtenAs(readOwn(kind, text, units), {text, place, proposed: true})
}
