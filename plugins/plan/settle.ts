import {assumptionRows, followingRows, inherited, surroundingRows} from '../build-file/assumptions.ts'
import {writeBare} from '../build-file/quantities/write-length.ts'
import type {Build} from '../build-file/schema/build.ts'
import {kindAt, ownAt, placeOf, setterOf, valueAt, valueBelow, writtenAs} from '../build-file/schema/path.ts'
import type {BuildValues, JournalSettings} from '../build-file/schema/schema.ts'
import type {Written} from '../build-file/schema/values.ts'
import {type AssumptionRow, practice} from '../build-file/usual/row.ts'
import {inch, inchMm} from '../tables/units.ts'
import {planHeights} from './action/action.ts'
import {proposedGrooveMm} from './action/nut.ts'
import {planBoxPlace} from './kit/box-place.ts'
import {readOwn} from './kit/own-readings.ts'
import {leavesOfTexts, withTexts} from './kit/proposal-texts.ts'
import type {AssumedWhy, Assumption, Settled} from './kit/settled.ts'
import {woodOf} from './kit/woods.ts'
import {boardEndMm} from './neck/board.ts'
import {proposalsFor} from './proposals/propose.ts'

/**
 * Fill in what the trade has a usual value for, and propose what it has none for; list each value that was. What is
 * proposed counts as if the file said it, and then what is assumed is assumed anew. A build that is settled stays as
 * it is.
 */
export function settle(build: Build | Settled, journal: JournalSettings = {}): Settled {
  if ('assumptions' in build) return build
  const assumed = assume(build, journal)
  const proposals = proposalsFor(assumed)
  if (proposals.length === 0) return assumed
  let proposed = build
  const listed: Assumption[] = []
  for (const one of proposals) {
    if (!('texts' in one)) continue
    const leaves = leavesOfTexts(one.texts, proposed.values)
    proposed = {...proposed, values: withTexts(proposed, one.texts, assumed.units)}
    for (const [path, value] of leaves)
      if (!valueAt(build.values, path)) listed.push({path, value, why: one.why, proposed: true})
  }
  const settled = assume(proposed, journal)
  return {...settled, assumptions: [...settled.assumptions, ...listed], proposals}
}

/**
 * Fill in what the trade has a usual value for, and list each value that was.
 * A length in the list of assumptions is written to 1/64 in, or 0.1 mm.
 */
export function assume(build: Build, journal: JournalSettings = {}): Settled {
  const values = {...build.values}
  const assumptions: Assumption[] = []
  const units = values.units?.value ?? journal.units?.value ?? 'in'
  const set = setterOf(values)
  const assume = (path: string, value: object, {text, why, listed = path}: Reason) => {
    set(path, writtenAs(value, {text, place: placeOf(build, path), assumed: true}))
    assumptions.push({path: listed, value: text, why})
  }

  for (const path of inherited.paths) {
    const usual = valueAt(journal, path) as Written | undefined
    if (usual && !valueAt(values, path)) assume(path, usual, {text: usual.text, why: inherited.why})
  }
  if (!values.units) assume('units', {value: 'in'}, {text: 'in', why: practice})
  const [rulerMm, text] = units === 'in' ? [inch(1 / 32), '1/32'] : [0.5, '0.5']
  if (!values.ruler) assume('ruler', {mm: rulerMm}, {text, why: practice})

  const assumeBy = ({value: usual, why, listed}: AssumptionRow, path: string, item: number) => {
    const value = usual(values, item)
    if (typeof value === 'string')
      assume(path, readOwn(kindAt(path), value, units), {text: value, why, listed})
    else if (value) assume(path, value, {text: lengthText(value.mm, units), why, listed})
  }
  for (const {row, list, steps, key} of rows) {
    const own = valueBelow(values, steps)
    if (key === undefined) {
      if (!own) assumeBy(row, list, 0)
    } else if (own)
      for (const [item, one] of (own as Record<string, object>[]).entries())
        if (!ownAt(one, key)) assumeBy(row, `${list}.${item + 1}.${key}`, item)
  }
  for (const {path, why} of followingRows) {
    const mm = valueAt(values, path) ? undefined : following[path](values)
    if (mm !== undefined) assume(path, {mm}, {why, text: lengthText(mm, units)})
  }
  for (const [path, name] of bearingWoods(values)) {
    const weakest = woodOf(name)?.weakest
    if (weakest) assumptions.push({path, value: weakest, why: 'weakest kind' satisfies AssumedWhy})
  }
  for (const {path, value, why, applies} of surroundingRows)
    if (applies(values)) assumptions.push({path, value, why})
  return {
    ...build,
    values,
    assumptions,
    proposals: [],
    units,
    rulerMm: values.ruler!.mm,
    referenceHz: values['reference-pitch']?.value ?? 440,
    minutes: build.days.reduce((sum, day) => sum + (day.minutes ?? 0), 0),
    told: [...build.days.map(({title}) => title), ...(build.ticked ?? [])],
  }
}

/** Each row with its path taken apart: up to its list, and the key of an item. */
const rows = assumptionRows.map((row) => {
  const [list, key] = row.path.split('.*.') as [string, string | undefined]
  return {row, list, steps: list.split('.'), key}
})

/** What the plan computes where the file leaves it out, in mm; undefined where it does not apply. */
const following: Record<(typeof followingRows)[number]['path'], (values: BuildValues) => number | undefined> =
  {
    'fingerboard.to': (values) => boardEndMm(values, planBoxPlace(values)),
    'nut.groove': (values) =>
      values.nut ? proposedGrooveMm(values, planHeights(values, planBoxPlace(values))) : undefined,
  }

/** List the woods whose strength is judged, by their paths: of the neck, its laminations, the box and its top. */
function bearingWoods({neck, box}: BuildValues): [path: string, name: string][] {
  const named: [string, string | undefined][] = [
    ['neck.wood', neck?.laminations ? undefined : neck?.wood?.value],
    ...(neck?.laminations ?? []).map(({wood}, i): [string, string | undefined] => [
      `neck.laminations.${i + 1}.wood`,
      wood?.value,
    ]),
    ['box.wood', box?.wood?.value],
    ['box.top.wood', box?.top?.wood?.value],
  ]
  return named.flatMap(([path, name]) => (name === undefined ? [] : [[path, name]]))
}

interface Reason {
  text: string
  why: string
  /** The path that it is listed under, where that is a shorter one. */
  listed?: string | undefined
}

function lengthText(mm: number, units: 'in' | 'mm'): string {
  const ruler = units === 'in' ? inch(1 / 64) : 0.1
  const onRuler = Math.abs(mm / ruler - Math.round(mm / ruler)) < 1e-6
  // Such as a gauge's core: thinner than any ruler shows.
  if (mm < 1 && !onRuler) return (units === 'in' ? mm / inchMm : mm).toFixed(4).replace(/0$/, '')
  return writeBare(mm, {units, rulerMm: ruler})
}
