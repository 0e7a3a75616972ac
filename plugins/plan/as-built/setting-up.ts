import {type SetupFault, setupFaults} from '../../tables/setup-faults.ts'
import type {BridgeSet} from '../action/bridge.ts'
import type {Settled} from '../kit/settled.ts'
import type {Scale} from '../scale/scale.ts'
import type {AsBuilt} from './as-built.ts'
import {type Likely, likelyFaults, type Strung} from './likely-faults.ts'

/** What to move, or a fault to look for. */
export type SettingUp = Move | Fault

export type Move = (
  | {move: 'nut'; kind: NutKind | undefined; measuredMm: number; offMm: number}
  | {move: 'octave'; measuredMm: number; offMm: number; afterNut?: boolean | undefined}
  /** By the length from nut to bridge that was measured. */
  | {move: 'bridge'; by: 'length'; measuredMm: number; offMm: number; set: BridgeSet}
  /** By the pitch of a line, against what is planned there. */
  | {move: 'bridge'; by: 'pitch'; label: string; cents: number; plannedCents: number}
) & {
  /** How far: down, deeper or away from the nut; negative the other way. */
  amountMm: number
}

export type NutKind = 'rod' | 'bolt' | 'flat' | 'zero-fret'

export interface Fault {
  fault: SetupFault
  /** Why this build makes it likely. */
  likely?: Likely | undefined
}

/** What a move of the setting up puts right. */
const righted: Readonly<Record<Move['move'], readonly string[]>> = {
  nut: ['action.nut'],
  octave: ['action.octave'],
  bridge: ['scale', 'scale.length', 'bridge.from-tail'],
}

/** List the paths whose measures the setting up calls for mending: whoever copies the build takes what was planned. */
export const mendedPaths = (settingUp: readonly SettingUp[] = []): string[] =>
  settingUp.flatMap((one) => ('move' in one ? righted[one.move] : []))

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
    ...fromMeasures(strung, settled.values.nut?.kind?.value),
    ...faults.filter((one) => one.likely),
    ...faults.filter((one) => !one.likely),
  ]
}

/**
 * Say what to move, and how far, from what was measured: nut first, then heights at the bridge, then its place. What
 * is within its tolerance stays.
 */
function fromMeasures({asBuilt: measured = [], scale, bridge}: Strung, kind: NutKind | undefined): Move[] {
  const off = (path: string) => measured.find((one) => one.path === path && one.isOut)
  const [nut, octave] = [off('action.nut'), off('action.octave')]
  return [
    ...(nut ? [nutHeight(nut, kind)] : []),
    ...(octave ? [octaveHeight(octave, nut !== undefined)] : []),
    ...bridgePlace(measured, scale, bridge?.setAt),
  ]
}

function nutHeight({difference = 0, measured}: AsBuilt, kind: NutKind | undefined): Move {
  return {move: 'nut', kind, measuredMm: measured, offMm: difference, amountMm: difference}
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
function bridgePlace(
  measured: readonly AsBuilt[],
  scale: Scale | undefined,
  set: BridgeSet | undefined,
): Move[] {
  const lengthMm = scale?.lengthMm
  const lines = scale?.lines ?? []
  if (lengthMm === undefined) return []
  const read = measured.flatMap((one) => {
    const line = lines.find(({label}) => one.path === `cents.${label}`)
    return line && one.difference !== undefined ? [{...one, line}] : []
  })
  const [best] = read.toSorted((a, b) => Math.abs(a.line.cents - 1200) - Math.abs(b.line.cents - 1200))
  if (best) {
    const {line, measured: cents, planned: plannedCents = 0, difference = 0, isOut} = best
    const amountMm = bridgeMoveMm(difference, lengthMm, line.cents)
    return isOut ? [{move: 'bridge', by: 'pitch', label: line.label, cents, plannedCents, amountMm}] : []
  }
  const length = measured.find(({path}) => path === 'scale.length' || path === 'scale')
  if (!set || !length?.isOut) return []
  const {measured: measuredMm, difference: offMm = 0} = length
  return [{move: 'bridge', by: 'length', measuredMm, offMm, set, amountMm: -offMm}]
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
