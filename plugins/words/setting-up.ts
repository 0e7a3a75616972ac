import type {Likely} from '../plan/as-built/likely-faults.ts'
import type {Fault, Move, NutKind, SettingUp} from '../plan/as-built/setting-up.ts'
import {setupFaults} from '../tables/setup-faults.ts'
import {writeMeasured} from './measured.ts'
import {stringAtLine, type Units} from './quantities.ts'

/** What is found, and what to do about it; of a fault its usual cause, and why this build makes it likely. */
export interface SettingUpWords {
  find: string
  does: string
  cause?: string | undefined
  because?: string | undefined
}

/** Say one thing to move, or one fault to look for. */
export function settingUpInWords(one: SettingUp, units: Units): SettingUpWords {
  return 'fault' in one ? faultInWords(one, units) : moveInWords(one, units)
}

function faultInWords({fault, likely}: Fault, units: Units): SettingUpWords {
  const {fault: find, cause, cure: does} = setupFaults[fault]
  return {find, does, cause, because: likely && whyLikely(likely, units)}
}

function whyLikely(likely: Likely, {units}: Units): string {
  switch (likely.because) {
    case 'low nut':
      return `The strings lie only ${writeMeasured(likely.mm, 'mm', {units})} over the nut line.`
    case 'low octave':
      return `Over the octave the strings lie only ${writeMeasured(likely.mm, 'mm', {units})} high.`
    case 'bow':
      return `In time the strings may pull it hollow by ${writeMeasured(likely.mm, 'mm', {units})}.`
    case 'back bow':
      return `It is bowed back by ${writeMeasured(likely.mm, 'mm', {units})}.`
    case 'flat bridge':
      return `They go down only ${likely.deg.toFixed(1)}° behind the bridge.`
    case 'air':
      return `The box answers near ${likely.note}: ${stringAtLine(likely)}.`
    case 'nylon':
      return 'Nylon stretches for days.'
    case 'coil':
      return 'A coil picks up every wire around.'
    case 'bridge on lid':
      return 'The pickup sits under a bridge on the lid.'
  }
}

function moveInWords(move: Move, {units}: Units): SettingUpWords {
  if (move.move === 'bridge') return bridgeInWords(move, units)
  const {measuredMm, offMm} = move
  const size = (mm: number) => writeMeasured(Math.abs(mm), 'mm', {units, near: measuredMm})
  const [high, off] = [size(measuredMm), size(offMm)]
  const side = offMm > 0 ? 'more' : 'less'
  if (move.move === 'nut')
    return {
      find: `The strings stand ${high} high at the nut, ${off} ${side} than drawn.`,
      does: `${nutMoves[move.kind ?? 'any'](off)[offMm > 0 ? 0 : 1]}, before anything else; over the octave that is half as much.`,
    }
  return {
    find: `The strings stand ${high} high over the octave, ${off} ${side} than drawn.`,
    does: `${offMm > 0 ? 'Lower' : 'Raise'} the bridge by ${size(2 * offMm)}, twice as much${move.afterNut ? '; measure again once the nut is done, and take what is left' : ''}.`,
  }
}

/** How each kind of nut is lowered, and how it is raised. */
const nutMoves: Readonly<Record<NutKind | 'any', (by: string) => [lower: string, raise: string]>> = {
  rod: (by) => [`Bed the rod ${by} deeper`, `Raise the rod by ${by}, on a slip of veneer`],
  bolt: (by) => [`Bed the bolt ${by} deeper`, `Raise the bolt by ${by}, on a slip of veneer`],
  flat: (by) => [`Cut every slot of the nut ${by} deeper`, `Raise the nut by ${by}, on a slip of veneer`],
  'zero-fret': (by) => [
    `Dress the zero fret down by ${by}, but never below the crowns of the others`,
    `Put in a zero fret with a crown that is ${by} higher`,
  ],
  any: (by) => [`Lower the strings at the nut by ${by}`, `Raise the nut by ${by}`],
}

/** Places of the bridge are told as finely as a saddle is placed. */
function bridgeInWords(move: Extract<Move, {move: 'bridge'}>, units: Units['units']): SettingUpWords {
  const size = (mm: number) => writeMeasured(Math.abs(mm), 'mm', {units, near: Math.max(1, Math.abs(mm))})
  if (move.by === 'length') {
    const {firstMm, lastMm} = move.set
    const isSlanted = size(firstMm) !== size(lastMm)
    const planned = isSlanted
      ? `${size(firstMm)} to ${size(lastMm)}, from the first string to the last`
      : size(firstMm)
    return {
      find: `From nut to bridge it measures ${size(move.measuredMm)}; it is set at ${planned}.`,
      does: `Move the bridge ${size(move.offMm)} ${move.offMm > 0 ? 'towards' : 'away from'} the nut, if the lines were marked for the drawn scale.`,
    }
  }
  const {label, cents, plannedCents, amountMm} = move
  const reads = centsInWords(cents)
  const plans = Math.abs(plannedCents) < 0.05 ? '' : `, where ${centsInWords(plannedCents)} is planned`
  return {
    find: `Line ${label} reads ${reads}${plans}.`,
    does: `Move the bridge ${size(amountMm)} ${amountMm > 0 ? 'away from' : 'towards'} the nut, under every string that reads so; then tune and read again.`,
  }
}

/** Say what a tuner reads: `4 cents sharp`, or `in tune`. */
function centsInWords(cents: number): string {
  const size = Number(Math.abs(cents).toFixed(1))
  return size === 0 ? 'in tune' : `${size} ${size === 1 ? 'cent' : 'cents'} ${cents > 0 ? 'sharp' : 'flat'}`
}
