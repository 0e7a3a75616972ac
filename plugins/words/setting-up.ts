import type {Likely} from '../plan/likely-faults.ts'
import type {Fault, Move, SettingUp} from '../plan/setting-up.ts'
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
      return `The neck bows by more than the strings stand over line ${likely.label}.`
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
  const size = (mm: number, near: number) => writeMeasured(Math.abs(mm), 'mm', {units, near})
  if (move.move === 'bridge') return bridgeInWords(move, (mm) => size(mm, move.scaleMm))
  const {measuredMm, offMm, afterNut} = move
  const [high, off] = [measuredMm, offMm].map((mm) => size(mm, measuredMm))
  const side = offMm > 0 ? 'more' : 'less'
  if (move.move === 'nut')
    return {
      find: `All strings stand ${high} high at the nut, ${off} ${side} than drawn.`,
      does: `${offMm > 0 ? `Cut every slot of the nut, or bed the rod, ${off} deeper` : `Raise the nut by ${off}`}, before anything else; over the octave that is half as much.`,
    }
  return {
    find: `All strings stand ${high} high over the octave, ${off} ${side} than drawn.`,
    does: `${offMm > 0 ? 'Lower' : 'Raise'} the bridge by ${size(2 * offMm, measuredMm)}, twice as much${afterNut ? '; measure again once the nut is done, and take what is left' : ''}.`,
  }
}

function bridgeInWords(move: Extract<Move, {move: 'bridge'}>, size: (mm: number) => string): SettingUpWords {
  if (move.by === 'length')
    return {
      find: `From nut to bridge it measures ${size(move.measuredMm)}, ${size(move.offMm)} ${move.offMm > 0 ? 'more' : 'less'} than drawn.`,
      does: `Move the bridge ${size(move.offMm)} ${move.offMm > 0 ? 'towards' : 'away from'} the nut, if the lines were marked for the drawn scale.`,
    }
  const isSharp = move.cents > 0
  return {
    find: `Line ${move.label} sounds ${Number(Math.abs(move.cents).toFixed(1))} cents ${isSharp ? 'sharp' : 'flat'}.`,
    does: `Move the bridge ${size(move.amountMm)} ${isSharp ? 'away from' : 'towards'} the nut, under every string that reads so; then tune and read again.`,
  }
}
