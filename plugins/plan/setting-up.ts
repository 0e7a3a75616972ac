import {writeMeasured} from '../build-file/quantities/write-measured.ts'
import {type SetupFault, setupFaults} from '../tables/setup-faults.ts'
import type {AsBuilt} from './as-built.ts'
import {likelyFaults, type Strung} from './likely-faults.ts'
import type {Scale} from './scale.ts'
import type {Settled} from './settle.ts'

export interface SettingUp {
  find: string
  does: string
  /** How far: down, deeper or away from the nut; negative the other way. */
  amountMm?: number | undefined
  /** Of a fault. */
  cause?: string | undefined
  /** Why this build makes that fault likely. */
  because?: string | undefined
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
    .filter((name) => likely[name] !== undefined)
    .map((name): SettingUp => {
      const {fault, cause, cure} = setupFaults[name]
      return {find: fault, does: cure, cause, because: likely[name] || undefined}
    })
  return [
    ...fromMeasures(settled.units, strung),
    ...faults.filter(({because}) => because),
    ...faults.filter(({because}) => !because),
  ]
}

/** Pitch is read off a tuner to about this much (cents): common practice, no source. */
const readCents = 0.5

/** Say what to move, and how far, from what was measured: nut first, then heights at the bridge, then its place. */
function fromMeasures(units: 'in' | 'mm', {asBuilt: measured = [], scale}: Strung): SettingUp[] {
  const off = (path: string) =>
    measured.find((one) => one.path === path && Math.abs(one.difference ?? 0) > 1e-6)
  const size: Size = (mm, near) => writeMeasured(Math.abs(mm), 'mm', {units, near})
  const [nut, octave] = [off('action.nut'), off('action.octave')]
  return [
    ...(nut ? [nutHeight(nut, size)] : []),
    ...(octave ? [octaveHeight(octave, size, nut !== undefined)] : []),
    ...bridgePlace(measured, scale, size),
  ]
}

/** Write a length as finely as a length of about `near` mm is measured. */
type Size = (mm: number, near: number) => string

function nutHeight({difference = 0, measured}: AsBuilt, size: Size): SettingUp {
  const does =
    difference > 0
      ? `Cut every slot of the nut, or bed the rod, ${size(difference, measured)} deeper`
      : `Raise the nut by ${size(difference, measured)}`
  return {
    find: `All strings stand ${size(measured, measured)} high at the nut, ${size(difference, measured)} ${difference > 0 ? 'more' : 'less'} than drawn.`,
    does: `${does}, before anything else; over the octave that is half as much.`,
    amountMm: difference,
  }
}

function octaveHeight({difference = 0, measured}: AsBuilt, size: Size, afterNut: boolean): SettingUp {
  return {
    find: `All strings stand ${size(measured, measured)} high over the octave, ${size(difference, measured)} ${difference > 0 ? 'more' : 'less'} than drawn.`,
    does: `${difference > 0 ? 'Lower' : 'Raise'} the bridge by ${size(2 * difference, measured)}, twice as much${afterNut ? '; measure again once the nut is done, and take what is left' : ''}.`,
    amountMm: 2 * difference,
  }
}

/** By the line nearest the octave whose pitch was read; without any, by the length itself. */
function bridgePlace(measured: readonly AsBuilt[], scale: Scale | undefined, size: Size): SettingUp[] {
  const lengthMm = scale?.lengthMm
  const lines = scale?.lines ?? []
  if (lengthMm === undefined) return []
  const read = measured.flatMap(({path, difference}) => {
    const line = lines.find(({label}) => path === `cents.${label}`)
    return line && difference !== undefined ? [{line, cents: difference}] : []
  })
  const best = read.toSorted((a, b) => Math.abs(a.line.cents - 1200) - Math.abs(b.line.cents - 1200))[0]
  if (best) return Math.abs(best.cents) < readCents ? [] : [byPitch(best, lengthMm, size)]
  const length = measured.find(({path}) => path === 'scale.length')
  const mm = length?.difference ?? 0
  if (Math.abs(mm) < 1e-6) return []
  return [
    {
      find: `From nut to bridge it measures ${size(length!.measured, lengthMm)}, ${size(mm, lengthMm)} ${mm > 0 ? 'more' : 'less'} than drawn.`,
      does: `Move the bridge ${size(mm, lengthMm)} ${mm > 0 ? 'towards' : 'away from'} the nut, if the lines were marked for the drawn scale.`,
      amountMm: -mm,
    },
  ]
}

function byPitch(
  {line, cents}: {line: {label: string; cents: number}; cents: number},
  lengthMm: number,
  size: Size,
): SettingUp {
  const moveMm = bridgeMoveMm(cents, lengthMm, line.cents)
  const side = cents > 0 ? 'sharp' : 'flat'
  return {
    find: `Line ${line.label} sounds ${Number(Math.abs(cents).toFixed(1))} cents ${side}.`,
    does: `Move the bridge ${size(moveMm, lengthMm)} ${cents > 0 ? 'away from' : 'towards'} the nut, under every string that reads so; then tune and read again.`,
    amountMm: moveMm,
  }
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
