import {breakLimits} from '../../tables/strings.ts'
import type {Balance} from './balance.ts'
import {noteFrequencyHz} from './note-frequency.ts'
import {noteName} from './note-name.ts'
import type {StringFacts, StringPlace} from './string-facts.ts'
import {massOfPullKgM, stringTensionN} from './string-tension.ts'
import type {StringValues} from './string-wire.ts'

/** The last bit of a pull at the very limit must not keep a note that is still too high. */
const slack = 1e-9

/**
 * Say what would mend a string that is slack, stiff or uneven: the pull to aim for (N), the mass per length (kg/m) that
 * has it, and the pull (N) that its packet would print then; and, where it is tuned too near its strength, the highest
 * note that is clear of it. Undefined of a sound string.
 */
export function mendString(
  {note, tension}: StringValues,
  {lengthMm, frequencyHz}: StringPlace,
  {breakFraction, pull}: StringFacts,
  {targetN, uneven}: Balance,
): StringFacts['mend'] {
  if (lengthMm === undefined) return undefined
  const massKgM = massOfPullKgM(targetN, lengthMm, frequencyHz)
  const packetHz = tension?.note && noteFrequencyHz(tension.note.midi, 440)
  const tooHigh = note && breakFraction !== undefined && breakFraction >= breakLimits.near
  if (pull !== 'slack' && pull !== 'stiff' && !uneven && !tooHigh) return undefined
  return {
    tensionN: targetN,
    massKgM,
    ...(packetHz && tension?.scale && {packetN: stringTensionN(massKgM, tension.scale.mm, packetHz)}),
    ...(tooHigh && {
      note: noteName(Math.ceil(note.midi - 6 * Math.log2(breakFraction / breakLimits.near) - slack) - 1),
    }),
  }
}
