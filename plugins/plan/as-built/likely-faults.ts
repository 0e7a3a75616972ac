import type {SetupFault} from '../../tables/setup-faults.ts'
import {centsOf} from '../../tables/units.ts'
import type {Action} from '../action/action.ts'
import type {Bridge} from '../action/bridge.ts'
import type {Box} from '../box/box.ts'
import type {Pickup} from '../box/pickup.ts'
import {noteName} from '../kit/notes.ts'
import type {Settled} from '../kit/settled.ts'
import type {Bow} from '../neck/bow.ts'
import type {Scale} from '../scale/scale.ts'
import type {StringPlan} from '../strings/strings.ts'
import type {AsBuilt} from './as-built.ts'

// Limits below which a fault is likely: common practice, no source.
const lowFrettedNutMm = 0.38
const lowNutMm = 0.7
const slideNutMm = 2.4
const slideOctaveMm = 4
const boomCents = 35

/** What is set up. */
export interface Strung {
  scale: Scale | undefined
  strings: readonly StringPlan[] | undefined
  action: Action | undefined
  bridge: Bridge | undefined
  box: Box | undefined
  bow: Bow | undefined
  pickup: Pickup | undefined
  asBuilt: readonly AsBuilt[] | undefined
}

/** Why a build makes a fault likely, in numbers. */
export type Likely =
  | {because: 'low nut' | 'low octave'; mm: number}
  | {because: 'bow' | 'back bow'; mm: number}
  | {because: 'flat bridge'; deg: number}
  | {because: 'air'; note: string; string: string; label: string}
  | {because: 'nylon' | 'coil' | 'bridge on lid'}

/** Say for each fault whether it can happen to this build, and why its numbers make it likely. */
export function likelyFaults(
  {values, referenceHz}: Settled,
  strung: Strung,
): Record<SetupFault, Likely | 'can be' | 'cannot be'> {
  const {scale, strings, action, bridge, box, bow, pickup, asBuilt} = strung
  const slides = values.play?.value !== 'fingers'
  const lowMm = scale?.fretted ? lowFrettedNutMm : slides ? slideNutMm : lowNutMm
  const height = (path: string, planned = 0) => asBuilt?.find((one) => one.path === path)?.measured ?? planned
  const nutMm = height('action.nut', action?.nutMm)
  const octaveMm = height('action.octave', action?.octaveMm)
  const reliefMm = height('action.relief', values.action?.relief?.mm)
  const answersHz = asBuilt?.find(({path}) => path === 'resonance')?.measured ?? box?.resonanceLowHz
  const isNylon = strings?.some(({material}) => material === 'nylon')
  return {
    'open-buzz': action && nutMm < lowMm ? {because: 'low nut', mm: nutMm} : 'can be',
    'one-fret-buzz': scale?.fretted ? 'can be' : 'cannot be',
    'back-bow': !scale?.fretted
      ? 'cannot be'
      : reliefMm < 0
        ? {because: 'back bow', mm: -reliefMm}
        : 'can be',
    'too-hollow': bow?.tooLow || bow?.tooHollow ? {because: 'bow', mm: bow.reliefAfterCreepMm} : 'can be',
    'string-hops':
      bridge?.isFlat && bridge.breakAngleDeg !== undefined
        ? {because: 'flat bridge', deg: bridge.breakAngleDeg}
        : 'can be',
    'slide-rattles': !slides
      ? 'cannot be'
      : action && octaveMm < slideOctaveMm
        ? {because: 'low octave', mm: octaveMm}
        : 'can be',
    'dead-note': answersHz === undefined ? 'cannot be' : deadNote(answersHz, referenceHz, strung),
    'tuner-slips': isNylon ? {because: 'nylon'} : 'can be',
    'hum-touched': !pickup ? 'cannot be' : pickup.kind === 'magnetic' ? {because: 'coil'} : 'can be',
    howl: !pickup
      ? 'cannot be'
      : pickup.under === 'bridge' && bridge?.on === 'top'
        ? {because: 'bridge on lid'}
        : 'can be',
  }
}

function deadNote(hz: number, referenceHz: number, {scale, strings = []}: Strung): Likely | 'can be' {
  for (const {name, frequencyHz} of strings) {
    const cents = centsOf(hz / frequencyHz)
    const line = [{label: '0', cents: 0}, ...(scale?.lines ?? [])].find(
      (one) => Math.abs(one.cents - cents) <= boomCents,
    )
    if (!line) continue
    const note = noteName(Math.round(69 + 12 * Math.log2(hz / referenceHz)))
    return {because: 'air', note, string: name, label: line.label}
  }
  return 'can be'
}
