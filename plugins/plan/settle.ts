import {type AssumptionRow, assumptionRows, surroundingRows} from '../build-file/assumptions.ts'
import type {Build} from '../build-file/build.ts'
import type {Kind} from '../build-file/kinds.ts'
import {kindAt} from '../build-file/paths.ts'
import {placeOf} from '../build-file/place-of.ts'
import {readLeaf} from '../build-file/quantities/read-leaf.ts'
import {writeLength} from '../build-file/quantities/write-length.ts'
import type {BuildValues, JournalSettings} from '../build-file/schema.ts'
import type {Written} from '../build-file/values.ts'
import type {Settled} from './part.ts'
import type {Assumption} from './shape/plan.ts'

type Tree = Record<string, unknown>

/**
 * Fill in what the trade has a usual value for, and list each value that was.
 * The build itself is not changed. A length in a list of assumptions is written to 1/64 in, or 0.1 mm.
 */
export function settle(
  build: Build,
  journal: JournalSettings,
): {settled: Settled; assumptions: Assumption[]} {
  const values = copyContainers(build.values) as BuildValues
  const assumptions: Assumption[] = []
  const units = values.units?.value ?? journal.units?.value ?? 'in'
  const assume = (path: string, value: unknown, text: string, why: string, listed = path) => {
    setAt(values, path, {...(value as object), text, place: placeOf(build, path), assumed: true})
    assumptions.push({path: listed, value: text, why})
  }

  for (const path of ['units', 'ruler', 'saw.kerf', 'saw.trim', 'saw.plane']) {
    const inherited = valueAt(journal, path) as (Written & {mm?: number}) | undefined
    if (inherited && !valueAt(values, path))
      assume(path, inherited, inherited.text, 'set for the whole journal')
  }
  if (!values.units) assume('units', {value: 'in'}, 'in', 'common practice, no source')
  if (!values.ruler)
    assume(
      'ruler',
      {mm: units === 'in' ? 25.4 / 32 : 0.5},
      units === 'in' ? '1/32' : '0.5',
      'common practice, no source',
    )

  for (const row of assumptionRows)
    for (const [path, item] of itemPaths(row, values)) {
      if (valueAt(values, path)) continue
      const value = row.value(values, item)
      if (value === undefined) continue
      const text = typeof value === 'string' ? value : lengthText(value.mm, units)
      assume(
        path,
        typeof value === 'string' ? assumedValue(path, value, units) : value,
        text,
        row.why,
        row.listed,
      )
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

function itemPaths(row: AssumptionRow, values: BuildValues): [string, number][] {
  const star = row.path.indexOf('.*')
  if (star < 0) return [[row.path, 0]]
  const items = (valueAt(values, row.path.slice(0, star)) as unknown[] | undefined) ?? []
  return items.map((_, i) => [row.path.replace('*', String(i + 1)), i])
}

function lengthText(mm: number, units: 'in' | 'mm'): string {
  const ruler = units === 'in' ? 25.4 / 64 : 0.1
  const onRuler = Math.abs(mm / ruler - Math.round(mm / ruler)) < 1e-6
  // Such as a gauge's core: thinner than any ruler shows.
  if (mm < 1 && !onRuler) return (units === 'in' ? mm / 25.4 : mm).toFixed(4).replace(/0$/, '')
  return writeLength(mm, {units, rulerMm: ruler}).replace(/ (in|mm)$/, '')
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

/** Copy records and lists, and share the values in them. */
function copyContainers(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(copyContainers)
  if (typeof value !== 'object' || value === null || 'place' in value) return value
  const copy: Tree = {}
  for (const key in value) copy[key] = copyContainers((value as Tree)[key])
  return copy
}

function valueAt(tree: object, path: string): unknown {
  let at: unknown = tree
  for (const key of path.split('.')) {
    if (typeof at !== 'object' || at === null) return undefined
    at = Array.isArray(at) ? at[Number(key) - 1] : (at as Tree)[key]
  }
  return at
}

function setAt(tree: object, path: string, value: unknown): void {
  const keys = path.split('.')
  const last = keys.pop()!
  let at = tree as Tree
  for (const key of keys) {
    const next = Array.isArray(at) ? at[Number(key) - 1] : at[key]
    if (next) at = next as Tree
    else at = at[key] = {} as Tree
  }
  at[last] = value
}
