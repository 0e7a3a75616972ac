import {tunings} from '../tables/intervals.ts'
import {breakLimits} from '../tables/strings.ts'
import {noteName} from './notes.ts'
import {pullWord, type StringFacts} from './string-facts.ts'
import {balance, type StringMend} from './string-mends.ts'

/** A set of strings as it is tuned. */
export interface TunedSet {
  /** By string. */
  midis: readonly number[]
  facts: readonly StringFacts[]
  play: string | undefined
}

/** The last bit of a pull at the very limit must not keep a note that is still too high. */
const slack = 1e-9
const octave = 12

/**
 * Say how a string that is tuned too near its strength comes clear of it: the highest note that leaves the set a
 * tuning, in its order, and pulling evenly, where there is one within an octave; and how far all strings go down
 * together. A pull, and with it the stress, grows as the square of the pitch. Undefined of a string that is clear.
 */
export function clearOfBreaking(
  at: number,
  {midis, facts, play}: TunedSet,
): Pick<StringMend, 'note' | 'lowerBy'> | undefined {
  const {breakFraction = 0} = facts[at]!
  const midi = midis[at]!
  if (breakFraction < breakLimits.near) return undefined
  const clear = Math.ceil(midi - 6 * Math.log2(breakFraction / breakLimits.near) - slack) - 1
  const rises = (notes: readonly number[]) => notes.every((one, i) => i === 0 || one >= notes[i - 1]!)
  const keeps = (lower: number) => {
    const notes = midis.with(at, lower)
    if (rises(midis) && !rises(notes)) return false
    return isTuning(notes, at) && pullsWell(at, retuned(facts, at, lower - midi), play)
  }
  const found = Array.from({length: octave}, (_, down) => clear - down).find(keeps)
  return {note: found === undefined ? undefined : noteName(found), lowerBy: midi - clear}
}

/** Whether notes are a common tuning, or one of them is another's note in any octave. */
function isTuning(midis: readonly number[], at: number): boolean {
  const lowest = Math.min(...midis)
  const steps = midis.map((midi) => midi - lowest)
  const isCommon = tunings.some(({semitones}) => String(semitones) === String(steps))
  const isDoubled = midis.some((midi, i) => i !== at && (midi - midis[at]!) % octave === 0)
  return midis.length === 1 || isCommon || isDoubled
}

function retuned(facts: readonly StringFacts[], at: number, semitones: number): StringFacts[] {
  const {tensionN = Number.NaN, pullLimits: limits, ...rest} = facts[at]!
  const pullsN = tensionN * 2 ** (semitones / 6)
  const pull = limits && pullWord(pullsN, limits)
  return facts.with(at, {...rest, pullLimits: limits, tensionN: pullsN, pull})
}

function pullsWell(at: number, set: readonly StringFacts[], play: string | undefined): boolean {
  const {pull} = set[at]!
  return (pull === 'easy' || pull === 'firm') && !balance(set, play)[at]!.uneven
}
