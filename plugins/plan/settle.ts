import {assumptionRows, surroundingRows} from '../build-file/assumptions.ts'
import type {Build} from '../build-file/build.ts'
import type {Kind} from '../build-file/kinds.ts'
import {kindAt, placeOf} from '../build-file/path.ts'
import {readLeaf} from '../build-file/quantities/read-leaf.ts'
import {writeBare} from '../build-file/quantities/write-length.ts'
import type {BuildValues, JournalSettings} from '../build-file/schema.ts'
import type {Written} from '../build-file/values.ts'
import type {Settled} from './part.ts'

export interface Assumption {
  path: string
  /** As a maker would write it. */
  value: string
  why: string
}

type Tree = Record<string, unknown>
type Keys = readonly string[]

const inheritedKeys: readonly Keys[] = [
  ['units'],
  ['ruler'],
  ['saw', 'kerf'],
  ['saw', 'trim'],
  ['saw', 'plane'],
]
const rows = assumptionRows.map((row) => ({...row, keys: row.path.split('.')}))

/**
 * Fill in what the trade has a usual value for, and list each value that was.
 * The build itself is not changed. A length in a list of assumptions is written to 1/64 in, or 0.1 mm.
 */
export function settle(
  build: Build,
  journal: JournalSettings,
): {settled: Settled; assumptions: Assumption[]} {
  const values: BuildValues = {...build.values}
  // The records and lists that are copies already; the others are the build's.
  const copies = new Set<object>([values])
  const assumptions: Assumption[] = []
  const units = values.units?.value ?? journal.units?.value ?? 'in'
  const assume = (keys: Keys, value: unknown, text: string, why: string, listed?: string) => {
    const path = keys.join('.')
    setAt(values, keys, {...(value as object), text, place: placeOf(build, path), assumed: true}, copies)
    assumptions.push({path: listed ?? path, value: text, why})
  }

  for (const keys of inheritedKeys) {
    const inherited = valueAt(journal, keys) as (Written & {mm?: number}) | undefined
    if (inherited && !valueAt(values, keys))
      assume(keys, inherited, inherited.text, 'set for the whole journal')
  }
  if (!values.units) assume(['units'], {value: 'in'}, 'in', 'common practice, no source')
  if (!values.ruler)
    assume(
      ['ruler'],
      {mm: units === 'in' ? 25.4 / 32 : 0.5},
      units === 'in' ? '1/32' : '0.5',
      'common practice, no source',
    )

  for (const row of rows)
    for (const [keys, item] of itemKeys(row.keys, values)) {
      if (valueAt(values, keys)) continue
      const value = row.value(values, item)
      if (value === undefined) continue
      if (typeof value === 'string')
        assume(keys, assumedValue(keys.join('.'), value, units), value, row.why, row.listed)
      else assume(keys, value, lengthText(value.mm, units), row.why, row.listed)
    }
  for (const {path, value, why, applies} of surroundingRows)
    if (applies(values)) assumptions.push({path, value, why})
  return {
    settled: {
      slug: build.slug,
      values,
      units,
      rulerMm: values.ruler!.mm,
      referenceHz: values['reference-pitch']?.value ?? 440,
      minutes: build.days.reduce((sum, day) => sum + (day.minutes ?? 0), 0),
      told: [...build.days.map(({title}) => title), ...(build.ticked ?? [])],
    },
    assumptions,
  }
}

/** The keys of a row, once for each item where they go through a list. */
function itemKeys(keys: Keys, values: BuildValues): [Keys, item: number][] {
  const star = keys.indexOf('*')
  if (star < 0) return [[keys, 0]]
  const items = (valueAt(values, keys.slice(0, star)) as unknown[] | undefined) ?? []
  return items.map((_, item) => [keys.with(star, String(item + 1)), item])
}

function lengthText(mm: number, units: 'in' | 'mm'): string {
  const ruler = units === 'in' ? 25.4 / 64 : 0.1
  const onRuler = Math.abs(mm / ruler - Math.round(mm / ruler)) < 1e-6
  // Such as a gauge's core: thinner than any ruler shows.
  if (mm < 1 && !onRuler) return (units === 'in' ? mm / 25.4 : mm).toFixed(4).replace(/0$/, '')
  return writeBare(mm, {units, rulerMm: ruler})
}

function assumedValue(path: string, text: string, units: 'in' | 'mm'): object {
  const leaf = leafOrChoice(kindAt(path))
  if (leaf?.is !== 'leaf') return {value: text}
  const reading = readLeaf(leaf.leaf, leaf.leaf === 'flag' ? text === 'true' : text, {units, limits: {}})
  return reading.ok ? reading.value : {}
}

function leafOrChoice(kind: Kind | undefined): Kind | undefined {
  return kind?.is === 'either' ? leafOrChoice(kind.first) : kind
}

function valueAt(tree: object, keys: Keys): unknown {
  let at: unknown = tree
  for (const key of keys) {
    if (typeof at !== 'object' || at === null) return undefined
    at = Array.isArray(at) ? at[Number(key) - 1] : (at as Tree)[key]
  }
  return at
}

/** Set a value, and copy the records and lists on the way to it that are not in `copies` yet. */
function setAt(tree: object, keys: Keys, value: unknown, copies: Set<object>): void {
  let at = tree as Tree
  keys.forEach((written, depth) => {
    const key = Array.isArray(at) ? Number(written) - 1 : written
    if (depth === keys.length - 1) {
      at[key] = value
      return
    }
    const next = at[key] as Tree | unknown[] | undefined
    if (!next || !copies.has(next)) {
      const copy = Array.isArray(next) ? [...next] : {...next}
      copies.add(copy)
      at[key] = copy
    }
    at = at[key] as Tree
  })
}
