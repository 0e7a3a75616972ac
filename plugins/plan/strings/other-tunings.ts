import {breakLimits} from '../../tables/string-pulls.ts'
import {tunings} from '../../tables/tunings.ts'
import type {PlanPart, Settled} from '../part.ts'
import type {Tuning} from '../shape/strings.ts'
import {balance} from './balance.ts'
import {noteFrequencyHz} from './note-frequency.ts'
import {noteName} from './note-name.ts'
import {stringFacts} from './string-facts.ts'

/** How far the lowest string may move, in semitones: nearest first, down before up. */
const shifts = [0, -1, 1, -2, 2, -3, 3, -4, 4, -5, 5]
const naturals = new Set([0, 2, 4, 5, 7, 9, 11])

/**
 * List common tunings of this many strings that the same gauges carry with an easy or firm pull, even among
 * themselves and clear of breaking; each from the natural note nearest to the present lowest one, with its pulls (N).
 */
export const otherTunings: PlanPart = (settled) => {
  const {values} = settled
  const midis = (values.strings ?? []).flatMap(({note}) => note?.midi ?? [])
  const lowest = midis[0]
  const rising = midis.every((midi, i) => i === 0 || midi >= midis[i - 1]!)
  if (lowest === undefined || midis.length !== values.strings?.length || !rising) return {}
  const roots = shifts.map((shift) => lowest + shift).filter((root) => naturals.has(root % 12))
  const found = tunings
    .filter(({semitones}) => semitones.length === midis.length)
    .flatMap(({name, semitones}) => {
      const asked = roots
        .map((root) => semitones.map((one) => root + one))
        .filter((pitches) => pitches.some((midi, i) => midi !== midis[i]))
      return first(asked, (pitches) => tuned(settled, name, pitches)) ?? []
    })
  return found.length > 0 ? {tunings: found} : {}
}

/** The first answer that there is. */
function first<From, To>(from: readonly From[], answer: (one: From) => To | undefined): To | undefined {
  for (const one of from) {
    const found = answer(one)
    if (found !== undefined) return found
  }
  return undefined
}

/** The strings at other pitches; undefined where they do not carry them. */
function tuned({values, referenceHz}: Settled, name: string, midis: readonly number[]): Tuning | undefined {
  const play = values.play?.value
  const lengthMm = values.scale?.length?.mm
  const facts = values.strings!.map((string, i) =>
    stringFacts(string, {frequencyHz: noteFrequencyHz(midis[i]!, referenceHz), lengthMm, play}),
  )
  const carries = facts.every(
    ({pull, breakFraction = 0}) => (pull === 'easy' || pull === 'firm') && breakFraction < breakLimits.near,
  )
  if (!carries || balance(facts, play).some(({uneven}) => uneven)) return undefined
  return {
    name,
    notes: midis.map(noteName),
    tensionsN: facts.map(({tensionN}) => tensionN!),
    pulls: facts.map(({pull}) => pull!),
  }
}
