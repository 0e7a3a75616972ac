import {ownAt} from '../../build-file/schema/path.ts'
import {noticeableCents} from '../../tables/hearing.ts'
import {inch} from '../../tables/units.ts'
import type {Settled} from '../kit/settled.ts'
import {type Effect, effectsOf} from './as-built-effects.ts'
import {type Drawn, type Measure, type Measured, measures, toTheBridge} from './as-measured.ts'

/** What was measured last beside what was drawn. */
export interface AsBuilt extends Measured {
  /** Measured less planned. */
  difference?: number | undefined
  /** How far it may be off, in the same unit. */
  tolerance?: number | undefined
  /** Where that comes from. */
  toleranceFrom?: ToleranceFrom | undefined
  /** Further off than that. */
  isOut?: boolean | undefined
  /** What the difference does. */
  effects: Effect[]
}

/** The build file's own, a usual one, or what is heard. */
export type ToleranceFrom = 'file' | 'practice' | 'hearing'

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
  const lengthMm = soundingMm(found, drawn)
  return found.map((measure): AsBuilt => {
    const {measured, planned} = measure
    const allowed = toleranceOf(measure, settled, drawn)
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

/**
 * Give the length (mm) from nut to bridge that the lines are heard against: as it was measured, less what the bridge
 * is set back, since that only makes up for the stretch of a pressed string.
 */
function soundingMm(found: readonly Measure[], {scale}: Drawn): number | undefined {
  const own = found.find(({path}) => path === 'scale.length' || path === 'scale')
  const offMm = own?.planned === undefined ? 0 : own.measured - own.planned
  return scale?.lengthMm === undefined ? undefined : scale.lengthMm + offMm
}

/** Count what was measured on each day (ISO) that is known. */
export function measuredByDay(asBuilt: readonly AsBuilt[] = []): Map<string, number> {
  const days = new Map<string, number>()
  for (const {on, earlier = []} of asBuilt)
    for (const day of [...earlier.map((one) => one.on), on])
      if (day !== undefined) days.set(day, (days.get(day) ?? 0) + 1)
  return days
}

/** A pull read off a balance is this part of it out (common practice, no source). */
const pullFraction = 0.1
const angleDeg = 0.5
/** Heights of strings are felt sooner than a ruler shows them (common practice, no source). */
const heightsMm: Readonly<Record<string, {fretted: number; free: number}>> = {
  'action.nut': {fretted: inch(0.005), free: inch(1 / 64)},
  'action.relief': {fretted: inch(0.005), free: inch(1 / 64)},
  'action.octave': {fretted: inch(1 / 64), free: inch(1 / 32)},
}

/**
 * Say how far a measure may be off, in its own unit, and where that comes from: the file's `tolerances`, or else the
 * usual one; a mark of the ruler for a length, but for heights of strings less, and to a slanted bridge so much more as
 * it lies nearer at one string than halfway. The air's note has no usual one: walls and leaks lower it at will.
 */
function toleranceOf(
  {path, planned, unit}: Measure,
  {values, rulerMm}: Settled,
  {scale, bridge}: Drawn,
): {tolerance: number; toleranceFrom: ToleranceFrom} | undefined {
  const given = ownAt(values.tolerances, path) as {mm?: number; deg?: number} | undefined
  const own = unit === 'deg' ? given?.deg : unit === 'mm' ? given?.mm : undefined
  if (own !== undefined) return {tolerance: own, toleranceFrom: 'file'}
  if (unit === 'mm') {
    const {firstMm = 0, lastMm = 0} = (ownAt(toTheBridge, path) && bridge?.setAt) ?? {}
    const usualMm = ownAt(heightsMm, path)?.[scale?.fretted ? 'fretted' : 'free'] ?? rulerMm
    return {
      tolerance: Math.min(usualMm, rulerMm) + Math.abs(firstMm - lastMm) / 2,
      toleranceFrom: 'practice',
    }
  }
  if (unit === 'deg') return {tolerance: angleDeg, toleranceFrom: 'practice'}
  if (unit === 'cents') return {tolerance: noticeableCents, toleranceFrom: 'hearing'}
  if (unit === 'N' && planned !== undefined)
    return {tolerance: pullFraction * planned, toleranceFrom: 'practice'}
  return undefined
}
