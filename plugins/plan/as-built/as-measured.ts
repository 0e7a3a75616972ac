import {isWritten, kindAt, ownAt} from '../../build-file/schema/path.ts'
import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {MeasuredDay} from '../../build-file/schema/values.ts'
import type {Action} from '../action/action.ts'
import type {Bridge} from '../action/bridge.ts'
import type {Intonation} from '../action/intonation.ts'
import type {Box} from '../box/box.ts'
import type {Scale} from '../scale/scale.ts'
import type {StringPlan} from '../strings/strings.ts'

/** A measure beside what was drawn for it. */
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
  intonation: readonly Intonation[] | undefined
  action: Action | undefined
  bridge: Bridge | undefined
  box: Box | undefined
  neckLengthMm: number | undefined
  /** How far the strings bow the neck. */
  bowMm: number | undefined
}

/** What was measured last, and where and when. */
export interface Measured extends Measure {
  /** Where the build file has it: `measured.scale.length`, `measured.2.scale.length`. */
  of: string
  /** The day it was measured. */
  on?: string | undefined
  /** What it measured before, the earliest first. */
  earlier?: Earlier[] | undefined
}

/** What was measured before, in the same unit. */
interface Earlier {
  on?: string | undefined
  measured: number
}

/** List what was measured, the last time that each was, with what it measured before. */
export function measures(values: BuildValues, drawn: Drawn): Measured[] {
  const last = new Map<string, Measured>()
  for (const day of values.measured?.days ?? [])
    for (const measure of measuredOn(day, values, drawn)) {
      const before = last.get(measure.path)
      const earlier = before && [...(before.earlier ?? []), {on: before.on, measured: before.measured}]
      const {path, measured, unit, planned} = measure
      last.set(path, {path, measured, unit, planned, of: `${day.of}.${path}`, on: day.on?.iso, earlier})
    }
  return [...last.values()]
}

/** List what was measured on a day, each beside what was drawn for it, where that is known; as the file groups them. */
function measuredOn(measured: MeasuredDay, values: BuildValues, drawn: Drawn): Measure[] {
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
        planned: plannedCents(label, drawn),
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
            planned: drawn.box?.resonanceLowHz,
          },
        ]
      : []),
  ]
}

/**
 * Say what a tuner, which counts from equal semitones, should read at a line: where the temperament has it, and under
 * frets what the bridge as it is set leaves over there, the middle of all strings.
 */
function plannedCents(label: string, {scale, intonation = []}: Drawn): number | undefined {
  const at = scale?.lines?.findIndex((one) => one.label === label) ?? -1
  const line = scale?.lines?.[at]
  if (!line) return undefined
  const left = intonation.reduce((sum, {compensatedCents}) => sum + (compensatedCents[at] ?? 0), 0)
  return (line.offEqualCents ?? 0) + left / Math.max(intonation.length, 1)
}

/** What is measured to where the bridge is set, behind its line where it is set back. */
export const toTheBridge: typeof computed = {
  scale: ({bridge}) => bridge?.setAt?.middleMm,
  'scale.length': ({bridge}) => bridge?.setAt?.middleMm,
  'bridge.from-tail': ({box, bridge}) =>
    box?.tailMm === undefined || !bridge?.setAt ? undefined : box.tailMm - bridge.setAt.middleMm,
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
  const isSetBack = drawn.scale?.fretted === true
  const set = isSetBack ? ownAt(toTheBridge, path)?.(drawn) : undefined
  return set ?? writtenAt(path, values, drawn.strings) ?? ownAt(computed, path)?.(drawn)
}

function writtenAt(path: string, values: BuildValues, strings: Drawn['strings']): number | undefined {
  let at: unknown = values
  const steps = path.split('.')
  for (const [i, step] of steps.entries()) {
    if (Array.isArray(at)) {
      const named = steps[i - 1] === 'strings' ? strings?.findIndex(({name}) => name === step) : -1
      at = at[named !== undefined && named >= 0 ? named : Number(step) - 1]
    } else at = ownAt(at as Record<string, unknown> | undefined, step)
  }
  if (typeof at === 'object' && at !== null && !isWritten(at)) {
    const kind = kindAt(path)
    const first = kind?.is === 'record' ? kind.short?.keys[0] : undefined
    at = first ? ownAt(at as Record<string, unknown>, first) : undefined
  }
  const {mm, deg} = (at ?? {}) as {mm?: number; deg?: number}
  return mm ?? deg
}
