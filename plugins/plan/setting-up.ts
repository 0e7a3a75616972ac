import {type SetupFault, setupFaults} from '../tables/setup-faults.ts'
import type {AsBuilt} from './as-built.ts'
import {type Likely, likelyFaults, type Strung} from './likely-faults.ts'
import type {Scale} from './scale.ts'
import type {Settled} from './settle.ts'

/** What to move, or a fault to look for. */
export type SettingUp = Move | Fault

export type Move = (
  | {move: 'nut' | 'octave'; measuredMm: number; offMm: number; afterNut?: boolean | undefined}
  /** By the length from nut to bridge that was measured. */
  | {move: 'bridge'; by: 'length'; measuredMm: number; offMm: number; scaleMm: number}
  /** By the pitch of a line. */
  | {move: 'bridge'; by: 'pitch'; label: string; cents: number; scaleMm: number}
) & {
  /** How far: down, deeper or away from the nut; negative the other way. */
  amountMm: number
}

export interface Fault {
  fault: SetupFault
  /** Why this build makes it likely. */
  likely?: Likely | undefined
}

const names = Object.keys(setupFaults) as SetupFault[]

/**
 * Say how to set it up (mm; positive: away from the nut, or down): what the measures call for, then the faults that
 * a maker meets, first those that this build's numbers make likely. Undefined while it has no strings or no scale.
 */
export function planSettingUp(settled: Settled, strung: Strung): SettingUp[] | undefined {
  if (!strung.strings?.length || strung.scale?.lengthMm === undefined) return undefined
  const likely = likelyFaults(settled, strung)
  const faults = names
    .filter((fault) => likely[fault] !== 'cannot be')
    .map((fault): Fault => {
      const why = likely[fault]
      return {fault, likely: typeof why === 'object' ? why : undefined}
    })
  return [
    ...fromMeasures(strung),
    ...faults.filter((one) => one.likely),
    ...faults.filter((one) => !one.likely),
  ]
}

/** Pitch is read off a tuner to about this much (cents): common practice, no source. */
const readCents = 0.5

/** Say what to move, and how far, from what was measured: nut first, then heights at the bridge, then its place. */
function fromMeasures({asBuilt: measured = [], scale}: Strung): Move[] {
  const off = (path: string) =>
    measured.find((one) => one.path === path && Math.abs(one.difference ?? 0) > 1e-6)
  const [nut, octave] = [off('action.nut'), off('action.octave')]
  return [
    ...(nut ? [nutHeight(nut)] : []),
    ...(octave ? [octaveHeight(octave, nut !== undefined)] : []),
    ...bridgePlace(measured, scale),
  ]
}

function nutHeight({difference = 0, measured}: AsBuilt): Move {
  return {move: 'nut', measuredMm: measured, offMm: difference, amountMm: difference}
}

function octaveHeight({difference = 0, measured}: AsBuilt, afterNut: boolean): Move {
  return {
    move: 'octave',
    measuredMm: measured,
    offMm: difference,
    afterNut: afterNut || undefined,
    amountMm: 2 * difference,
  }
}

/** By the line nearest the octave whose pitch was read; without any, by the length itself. */
function bridgePlace(measured: readonly AsBuilt[], scale: Scale | undefined): Move[] {
  const lengthMm = scale?.lengthMm
  const lines = scale?.lines ?? []
  if (lengthMm === undefined) return []
  const read = measured.flatMap(({path, difference}) => {
    const line = lines.find(({label}) => path === `cents.${label}`)
    return line && difference !== undefined ? [{line, cents: difference}] : []
  })
  const best = read.toSorted((a, b) => Math.abs(a.line.cents - 1200) - Math.abs(b.line.cents - 1200))[0]
  if (best) return Math.abs(best.cents) < readCents ? [] : [byPitch(best, lengthMm)]
  const length = measured.find(({path}) => path === 'scale.length')
  const mm = length?.difference ?? 0
  if (Math.abs(mm) < 1e-6) return []
  return [
    {move: 'bridge', by: 'length', measuredMm: length!.measured, offMm: mm, scaleMm: lengthMm, amountMm: -mm},
  ]
}

function byPitch(
  {line, cents}: {line: {label: string; cents: number}; cents: number},
  scaleMm: number,
): Move {
  const amountMm = bridgeMoveMm(cents, scaleMm, line.cents)
  return {move: 'bridge', by: 'pitch', label: line.label, cents, scaleMm, amountMm}
}

/**
 * Say how far the bridge has to move (mm; positive: away from the nut) for a line that sounds so many cents sharp.
 * A line at ratio r stops L/r, so moving the bridge by d makes it flat by (1200/ln 2)·(r − 1)·d/L; at the octave,
 * where r − 1 is 1, that is L·cents/1731. Source: derivative of cents = 1200·log2 of a ratio of lengths.
 */
export function bridgeMoveMm(cents: number, lengthMm: number, lineCents = 1200): number {
  const ratio = 2 ** (lineCents / 1200)
  return (lengthMm * cents * Math.LN2) / (1200 * (ratio - 1))
}
