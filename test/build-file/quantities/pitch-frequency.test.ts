import {Note} from 'tonal'
import {expect, test} from 'vitest'
import {readPitch} from '../../../plugins/build-file/quantities/read-pitch.ts'
import {noteFrequencyHz} from '../../../plugins/plan/kit/notes.ts'

const frequency = (text: string, referenceHz = 440) => {
  const pitch = readPitch(text)
  return pitch.ok ? noteFrequencyHz(pitch.value.midi, referenceHz) : Number.NaN
}

// tonal 6.4.3, a general library of note names.
test('every name of every octave is the pitch that a music library makes of it', () => {
  for (const letter of 'ABCDEFG')
    for (const accidental of ['', '#', 'b'])
      for (let octave = 0; octave <= 8; octave++) {
        const name = `${letter}${accidental}${octave}`
        const pitch = readPitch(name)
        expect(pitch.ok && pitch.value).toEqual({name, midi: Note.midi(name)})
        expect(Math.abs(frequency(name) / Note.freq(name)! - 1)).toBeLessThan(1e-15)
      }
})

// A4 = 440 Hz: ISO 16:1975. The others to ten decimals: On-Line Encyclopedia of Integer Sequences A329207 to A329218.
test.each([
  ['A4', 440],
  ['C4', 261.6255653006],
  ['C#4', 277.1826309768],
  ['D4', 293.6647679174],
  ['Eb4', 311.126983722],
  ['E4', 329.6275569128],
  ['F4', 349.228231433],
  ['F#4', 369.9944227116],
  ['G4', 391.9954359817],
  ['G#4', 415.3046975799],
  ['Bb4', 466.163761518],
  ['B4', 493.8833012561],
])('%s sounds at %d Hz', (name, hz) => {
  expect(frequency(name)).toBeCloseTo(hz, 9)
})

// OpenStax, University Physics vol. 1, section 16.3: a guitar's open strings, two decimals.
test.each([
  ['E4', 329.63],
  ['B3', 246.94],
  ['G3', 196],
  ['D3', 146.83],
  ['A2', 110],
  ['E2', 82.41],
])('the open string %s sounds at %d Hz', (name, hz) => {
  expect(Math.abs(frequency(name) - hz)).toBeLessThan(0.0051)
})

test('the reference pitch moves every pitch alike', () => {
  expect(frequency('A4', 432)).toBe(432)
  expect(frequency('A3', 432)).toBe(216)
})
