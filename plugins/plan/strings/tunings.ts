import type {BuildValues} from '../../build-file/schema/schema.ts'
import {tunings} from '../../tables/intervals.ts'
import {breakLimits} from '../../tables/strings.ts'
import {noteName} from '../kit/notes.ts'
import {type PullWord, pullWord, type StringFacts} from './string-facts.ts'
import {balance} from './string-mends.ts'
import type {StringPlan} from './strings.ts'

/** A tuning that the same strings carry. */
export interface Tuning {
  name: string
  notes: string[]
  tensionsN: number[]
  pulls: PullWord[]
}

/** How far the lowest string may move, in semitones: nearest first, down before up. */
const shifts = [0, -1, 1, -2, 2, -3, 3, -4, 4, -5, 5]
const naturals = new Set([0, 2, 4, 5, 7, 9, 11])

/**
 * List common tunings of this many strings that the same gauges carry with an easy or firm pull, even among
 * themselves and clear of breaking; each from the natural note nearest to the present lowest one, with its pulls (N).
 */
export function planTunings(values: BuildValues, strings: readonly StringPlan[] = []): Tuning[] | undefined {
  const midis = (values.strings ?? []).flatMap(({note}) => note?.midi ?? [])
  const [lowest] = midis
  const rises = midis.every((midi, i) => i === 0 || midi >= midis[i - 1]!)
  if (lowest === undefined || midis.length !== strings.length || !rises) return undefined
  const roots = shifts.map((shift) => lowest + shift).filter((root) => naturals.has(root % 12))
  const found = tunings
    .filter(({semitones}) => semitones.length === strings.length)
    .flatMap(({name, semitones}) => {
      for (const root of roots) {
        const pitches = semitones.map((one) => root + one)
        const moves = pitches.map((pitch, i) => pitch - midis[i]!)
        const retuned = moves.some((move) => move !== 0) && retune(strings, moves, values.play?.value)
        if (retuned) return [{name, notes: pitches.map(noteName), ...retuned}]
      }
      return []
    })
  return found.length > 0 ? found : undefined
}

/** The pulls of the strings so many semitones higher, a pull growing as the square of the pitch; undefined where they do not carry it. */
function retune(
  strings: readonly StringPlan[],
  moves: readonly number[],
  play: string | undefined,
): Pick<Tuning, 'tensionsN' | 'pulls'> | undefined {
  const retuned: StringFacts[] = []
  for (const [i, {tensionN, pullLimits, breakFraction = 0, material, frequencyHz}] of strings.entries()) {
    if (tensionN === undefined || !pullLimits) return undefined
    const grows = 2 ** (moves[i]! / 6)
    const pull = pullWord(tensionN * grows, pullLimits)
    if ((pull !== 'easy' && pull !== 'firm') || breakFraction * grows >= breakLimits.near) return undefined
    retuned.push({tensionN: tensionN * grows, pull, frequencyHz, material})
  }
  if (balance(retuned, play).some(({uneven}) => uneven)) return undefined
  return {tensionsN: retuned.map(({tensionN}) => tensionN!), pulls: retuned.map(({pull}) => pull!)}
}

/** Name the major chord that open strings sound, with or without its third: `G` of G2 D3 G3. Common practice, no source. */
export function openChord({strings = []}: Pick<BuildValues, 'strings'>): string | undefined {
  const classes = new Set(strings.flatMap(({note}) => (note ? [note.midi % 12] : [])))
  const root = [...classes].find(
    (one) =>
      classes.has((one + 7) % 12) &&
      [...classes].every((other) => [0, 4, 7].includes((other - one + 12) % 12)),
  )
  return root === undefined ? undefined : noteName(root).replace(/-?\d+$/, '')
}
