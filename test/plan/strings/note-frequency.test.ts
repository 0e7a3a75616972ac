import {Note} from 'tonal'
import {expect, test} from 'vitest'
import {noteFrequencyHz, noteName} from '../../../plugins/plan/kit/notes.ts'

// ISO 16:1975, Acoustics — Standard tuning frequency.
test('A4 is the reference pitch', () => {
  expect(noteFrequencyHz(69, 440)).toBe(440)
  expect(noteFrequencyHz(69, 432)).toBe(432)
})

// The on-line encyclopedia of integer sequences, A329207 to A329218, ten decimals.
test.each([
  [60, 261.6255653005],
  [61, 277.1826309768],
  [62, 293.6647679174],
  [63, 311.126983722],
  [64, 329.6275569128],
  [65, 349.228231433],
  [66, 369.9944227116],
  [67, 391.9954359817],
  [68, 415.3046975799],
  [70, 466.163761518],
  [71, 493.8833012561],
])('%i sounds at %f Hz', (midi, hz) => {
  expect(noteFrequencyHz(midi, 440)).toBeCloseTo(hz, 9)
})

// The general music library tonal 6.4.3.
test('every note from C0 to C8 agrees with a general music library', () => {
  for (let midi = 12; midi <= 108; midi++) {
    const name = Note.fromMidiSharps(midi)
    expect(noteName(midi)).toBe(name)
    expect(noteFrequencyHz(midi, 440)).toBeCloseTo(Note.freq(name)!, 9)
  }
})
