import {kindAt} from '../build-file/path.ts'
import type {BuildValues} from '../build-file/schema.ts'
import {noticeableCents, noticeableSource} from '../tables/hearing.ts'
import type {Action} from './action.ts'
import {type Effect, effectsOf} from './as-built-effects.ts'
import type {Box} from './box/box.ts'
import type {Bridge} from './bridge.ts'
import type {Scale} from './scale.ts'
import type {Settled} from './settle.ts'
import type {StringPlan} from './strings.ts'

/** What was measured beside what was drawn. */
export interface AsBuilt extends Measure {
  /** Measured less planned. */
  difference?: number | undefined
  /** How far it may be off, in the same unit. */
  tolerance?: number | undefined
  /** Where that comes from. */
  toleranceFrom?: string | undefined
  /** Further off than that. */
  isOut?: boolean | undefined
  /** What the difference does. */
  effects: Effect[]
}

export interface Measure {
  /** Below `measured`: a path of the front matter, `lines.12`, `cents.12`, `resonance`, `strings.D4.tension`. */
  path: string
  planned?: number | undefined
  measured: number
  unit: 'mm' | 'deg' | 'N' | 'cents' | 'Hz'
}

/** What a measure is held against. */
export interface Drawn {
  scale: Scale | undefined
  strings: readonly StringPlan[] | undefined
  action: Action | undefined
  bridge: Bridge | undefined
  box: Box | undefined
  neckLengthMm: number | undefined
  /** How far the strings bow the neck. */
  bowMm: number | undefined
}

/** Off by no more than the last bits of two readings: a measure on the limit is within it. */
const slack = 1e-6

/**
 * Put what was measured beside what was drawn, say how far it may be off, and what the difference does. Undefined
 * where nothing was measured.
 */
export function planAsBuilt(settled: Settled, drawn: Drawn): AsBuilt[] | undefined {
  const {referenceHz} = settled
  const found = measures(settled.values, drawn)
  if (found.length === 0) return undefined
  const lengthMm =
    found.find(({path}) => path === 'scale.length' || path === 'scale')?.measured ?? drawn.scale?.lengthMm
  return found.map((measure): AsBuilt => {
    const {measured, planned} = measure
    const allowed = toleranceOf(measure, settled)
    if (planned === undefined) return {...measure, ...allowed, effects: []}
    const difference = measured - planned
    return {
      ...measure,
      difference,
      ...allowed,
      isOut: allowed && Math.abs(difference) > allowed.tolerance + slack,
      effects: effectsOf({...measure, planned, difference}, {drawn, referenceHz, lengthMm}),
    }
  })
}

/** List what was measured, each beside what was drawn for it, where that is known; as the file groups them. */
function measures(values: BuildValues, drawn: Drawn): Measure[] {
  const {measured} = values
  if (!measured) return []
  const line = (label: string) => drawn.scale?.lines?.find((one) => one.label === label)
  return [
    ...measured.paths.flatMap(({path, value}): Measure[] => {
      const planned = plannedAt(path, values, drawn)
      const {mm, deg} = value as {mm?: number; deg?: number}
      if (mm !== undefined) return [{path, measured: mm, unit: 'mm', planned}]
      return deg === undefined ? [] : [{path, measured: deg, unit: 'deg', planned}]
    }),
    ...measured.lines.map(
      ({label, value}): Measure => ({
        path: `lines.${label}`,
        measured: value.mm,
        unit: 'mm',
        planned: line(label)?.fromNutMm,
      }),
    ),
    ...measured.cents.map(
      ({label, value}): Measure => ({
        path: `cents.${label}`,
        measured: value.value,
        unit: 'cents',
        // A tuner counts from equal semitones.
        planned: line(label) && (line(label)!.offEqualCents ?? 0),
      }),
    ),
    ...measured.tensions.map(
      ({name, value}): Measure => ({
        path: `strings.${name}.tension`,
        measured: value.n,
        unit: 'N',
        planned: drawn.strings?.find((one) => one.name === name)?.tensionN,
      }),
    ),
    ...(measured.resonance
      ? [
          {
            path: 'resonance',
            measured: measured.resonance.value,
            unit: 'Hz' as const,
            planned: drawn.box?.resonanceHz,
          },
        ]
      : []),
  ]
}

/** What the plan computes where the file does not say it: paths of the front matter, in mm. */
const computed: Readonly<Record<string, (drawn: Drawn) => number | undefined>> = {
  'action.nut': ({action}) => action?.nutMm,
  'action.octave': ({action}) => action?.octaveMm,
  'box.at': ({box}) => box?.atMm,
  'bridge.from-tail': ({box, bridge}) =>
    box?.tailMm !== undefined && bridge ? box.tailMm - bridge.stationMm : undefined,
  'bridge.height': ({bridge}) => bridge?.heightMm,
  'neck.length': ({neckLengthMm}) => neckLengthMm,
}

/**
 * Say what the drawing has at a path of the front matter (mm or degrees): as written, as assumed, or as computed.
 * Lists count from 1, strings go by their notes, and a short form stands for its first key (`neck.width`).
 */
function plannedAt(path: string, values: BuildValues, drawn: Drawn): number | undefined {
  return writtenAt(path, values, drawn.strings) ?? computed[path]?.(drawn)
}

function writtenAt(path: string, values: BuildValues, strings: Drawn['strings']): number | undefined {
  let at: unknown = values
  const steps = path.split('.')
  for (const [i, step] of steps.entries()) {
    if (Array.isArray(at)) {
      const named = steps[i - 1] === 'strings' ? strings?.findIndex(({name}) => name === step) : -1
      at = at[named !== undefined && named >= 0 ? named : Number(step) - 1]
    } else at = (at as Record<string, unknown> | undefined)?.[step]
  }
  if (typeof at === 'object' && at !== null && !('place' in at)) {
    const kind = kindAt(path)
    const first = kind?.is === 'record' ? kind.short?.keys[0] : undefined
    at = first ? (at as Record<string, unknown>)[first] : undefined
  }
  const {mm, deg} = (at ?? {}) as {mm?: number; deg?: number}
  return mm ?? deg
}

const practice = 'common practice, no source'
/** A pull read off a balance is this part of it out (common practice, no source). */
const pullFraction = 0.1
const angleDeg = 0.5

/**
 * Say how far a measure may be off, in its own unit, and where that comes from: the file's `tolerances`, or else the
 * usual one; a mark of the ruler for a length. The air's note has no usual one: walls and leaks lower it at will.
 */
function toleranceOf(
  {path, planned, unit}: Measure,
  {values, rulerMm}: Settled,
): {tolerance: number; toleranceFrom: string} | undefined {
  const given = values.tolerances?.[path] as {mm?: number; deg?: number} | undefined
  const own = unit === 'deg' ? given?.deg : unit === 'mm' ? given?.mm : undefined
  if (own !== undefined) return {tolerance: own, toleranceFrom: 'the build file'}
  if (unit === 'mm') return {tolerance: rulerMm, toleranceFrom: practice}
  if (unit === 'deg') return {tolerance: angleDeg, toleranceFrom: practice}
  if (unit === 'cents') return {tolerance: noticeableCents, toleranceFrom: noticeableSource}
  if (unit === 'N' && planned !== undefined)
    return {tolerance: pullFraction * planned, toleranceFrom: practice}
  return undefined
}
