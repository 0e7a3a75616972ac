import {tunings} from '../../tables/intervals.ts'
import {
  breakLimits,
  packetSpread,
  type StringMaterial,
  stringMaterials,
  unevenPull,
} from '../../tables/strings.ts'
import {noteFrequencyHz, noteName} from '../kit/notes.ts'
import {pullLimits, pullWord, type StringFacts, type StringPlace} from './string-facts.ts'
import {massOfPullKgM, massPerLengthKgM, type StringValues, stringTensionN, stringWire} from './wire.ts'

export interface Balance {
  /** Pull over the median pull of the strings of like material that pull easy or firm, its own among them, less 1. */
  offMedian?: number | undefined
  /** Too far off that median. */
  uneven?: true | undefined
  /** The pull (N) to aim for: the median of the others that pull easy or firm, else its own, or the middle of easy and firm. */
  targetN: number
}

/**
 * Compare the pulls of a set, string by string. Of two strings that are far apart only the one further from the usual
 * pull is called uneven, since each would mend the other.
 */
export function balance(set: readonly StringFacts[], play: string | undefined): Balance[] {
  return set.map((string) => {
    const {tensionN} = string
    const alike = set.filter((other) => feelOf(other) === feelOf(string) && other.tensionN !== undefined)
    const sound = alike.filter((other) => other !== string && pullsSoundly(other))
    const ownN = pullsSoundly(string) && tensionN !== undefined ? tensionN : usualN(string, play)
    const targetN = median(sound.map((other) => other.tensionN!)) ?? ownN
    // Strings that are themselves at fault are no measure for the others.
    const held = [string, ...sound]
    const middleN = median(held.flatMap((one) => one.tensionN ?? []))
    if (tensionN === undefined || middleN === undefined || held.length < 2) return {targetN}
    const offMedian = tensionN / middleN - 1
    const other = held.length === 2 ? sound[0] : undefined
    const isWorse = !other || farFromUsual(string, play) >= farFromUsual(other, play)
    return {targetN, offMedian, uneven: Math.abs(offMedian) > unevenPull && isWorse ? true : undefined}
  })
}

const pullsSoundly = ({pull}: StringFacts) => pull === 'easy' || pull === 'firm'
const materialOf = ({material}: StringFacts): StringMaterial => material ?? 'steel'
const feelOf = (string: StringFacts) => stringMaterials[materialOf(string)].feel

/** The middle between slack and stiff, in N, as ratios are heard and felt. */
function usualN(string: StringFacts, play: string | undefined): number {
  const {slackN, firmN} = pullLimits(materialOf(string), play)
  return Math.sqrt(slackN * firmN)
}

function farFromUsual(string: StringFacts, play: string | undefined): number {
  return Math.abs(Math.log(string.tensionN! / usualN(string, play)))
}

/** What would mend a string. */
export interface StringMend {
  /** The pull to aim for. */
  tensionN: number
  /** What a string of that pull weighs, kg/m. */
  massKgM: number
  /** The gauge in the file could weigh so. */
  isOfGauge?: boolean | undefined
  /** What a packet would print for it. */
  packetN?: number | undefined
  /** The highest note clear of breaking that leaves a tuning, where there is one. */
  note?: string | undefined
  /** How many semitones lower all strings are clear of it and keep their tuning. */
  lowerBy?: number | undefined
}

/**
 * Say what would mend a string that is slack, stiff, uneven or too near its strength: the pull to aim for (N), the
 * mass per length (kg/m) that has it, and the pull (N) that its packet would print then. Undefined of a sound string.
 */
export function mendString(
  values: StringValues,
  {lengthMm, frequencyHz}: StringPlace,
  {breakFraction, pull}: StringFacts,
  {targetN, uneven}: Balance,
): StringMend | undefined {
  const {note, tension} = values
  if (lengthMm === undefined) return undefined
  const wire = stringWire(values)
  const modelKgM = wire && massPerLengthKgM(wire)
  const massKgM = massOfPullKgM(targetN, lengthMm, frequencyHz)
  const packetHz = tension?.note && noteFrequencyHz(tension.note.midi, 440)
  const tooHigh = note && breakFraction !== undefined && breakFraction >= breakLimits.near
  if (pull !== 'slack' && pull !== 'stiff' && !uneven && !tooHigh) return undefined
  return {
    tensionN: targetN,
    massKgM,
    isOfGauge: modelKgM === undefined || Math.abs(massKgM / modelKgM - 1) <= packetSpread,
    packetN: packetHz && tension?.scale ? stringTensionN(massKgM, tension.scale.mm, packetHz) : undefined,
  }
}

/** Give the middle value, or the mean of the two in the middle; undefined of nothing. */
function median(values: readonly number[]): number | undefined {
  const sorted = Float64Array.from(values).sort()
  const upper = sorted[Math.floor(sorted.length / 2)]
  const lower = sorted[Math.floor((sorted.length - 1) / 2)]
  return upper === undefined || lower === undefined ? undefined : (lower + upper) / 2
}

/** A set of strings as it is tuned. */
interface TunedSet {
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
