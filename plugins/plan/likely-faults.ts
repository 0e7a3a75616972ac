import {writeMeasured} from '../build-file/quantities/write-measured.ts'
import type {SetupFault} from '../tables/setup-faults.ts'
import {centsOf} from '../tables/units.ts'
import type {Action} from './action.ts'
import type {AsBuilt} from './as-built.ts'
import type {Box} from './box/box.ts'
import type {Bridge} from './bridge.ts'
import type {Bow} from './neck/bow.ts'
import {noteName} from './notes.ts'
import type {Pickup} from './pickup.ts'
import type {Scale} from './scale.ts'
import type {Settled} from './settle.ts'
import type {StringPlan} from './strings.ts'

// Limits below which a fault is likely: common practice, no source.
const lowFrettedNutMm = 0.38
const lowNutMm = 0.7
const slideNutMm = 2.4
const slideOctaveMm = 4
const flatBridgeDeg = 5
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

/**
 * Say for each fault whether it can happen to this build, and why its numbers make it likely, in one sentence;
 * empty: it can happen; undefined: it cannot.
 */
export function likelyFaults(
  {values, units, referenceHz}: Settled,
  strung: Strung,
): Record<SetupFault, string | undefined> {
  const {scale, strings, action, bridge, box, bow, pickup, asBuilt} = strung
  const size = (mm: number) => writeMeasured(mm, 'mm', {units})
  const slides = values.play?.value !== 'fingers'
  const lowMm = scale?.fretted ? lowFrettedNutMm : slides ? slideNutMm : lowNutMm
  const height = (path: string, planned = 0) => asBuilt?.find((one) => one.path === path)?.measured ?? planned
  const nutMm = height('action.nut', action?.nutMm)
  const octaveMm = height('action.octave', action?.octaveMm)
  const answersHz = asBuilt?.find(({path}) => path === 'resonance')?.measured ?? box?.resonanceHz
  const isNylon = strings?.some(({material}) => material === 'nylon')
  return {
    'open-buzz': action && nutMm < lowMm ? `The strings lie only ${size(nutMm)} over the nut line.` : '',
    'one-fret-buzz': !scale?.fretted
      ? undefined
      : bow?.tooLow
        ? `The neck bows by more than the strings stand over line ${bow.tooLow.label}.`
        : '',
    'string-hops':
      bridge?.breakAngleDeg !== undefined && bridge.breakAngleDeg < flatBridgeDeg
        ? `They go down only ${bridge.breakAngleDeg.toFixed(1)}° behind the bridge.`
        : '',
    'slide-rattles': !slides
      ? undefined
      : action && octaveMm < slideOctaveMm
        ? `Over the octave the strings lie only ${size(octaveMm)} high.`
        : '',
    'dead-note': answersHz === undefined ? undefined : deadNote(answersHz, referenceHz, strung),
    'tuner-slips': isNylon ? 'Nylon stretches for days.' : '',
    'hum-touched': !pickup
      ? undefined
      : pickup.kind === 'magnetic'
        ? 'A coil picks up every wire around.'
        : '',
    howl: !pickup
      ? undefined
      : pickup.under === 'bridge' && bridge?.on === 'top'
        ? 'The pickup sits under a bridge on the lid.'
        : '',
  }
}

function deadNote(hz: number, referenceHz: number, {scale, strings = []}: Strung): string {
  for (const {name, frequencyHz} of strings) {
    const cents = centsOf(hz / frequencyHz)
    const line = [{label: '0', cents: 0}, ...(scale?.lines ?? [])].find(
      (one) => Math.abs(one.cents - cents) <= boomCents,
    )
    if (!line) continue
    const note = noteName(Math.round(69 + 12 * Math.log2(hz / referenceHz)))
    return `The box answers near ${note}: ${line.label === '0' ? `the open ${name}` : `line ${line.label} of ${name}`}.`
  }
  return ''
}
