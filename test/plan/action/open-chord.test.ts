import {expect, test} from 'vitest'
import {openChord} from '../../../plugins/plan/strings/tunings.ts'
import {planOf} from '../../support/plan-of.ts'

// Players' own names: open G of a guitar is D2 G2 D3 G3 B3 D4, open D is D2 A2 D3 F#3 A3 D4; common practice, no source.
test.each([
  ['[G2, D3, G3]', 'G'],
  ['[D2, G2, D3, G3, B3, D4]', 'G'],
  ['[D2, A2, D3, F#3, A3, D4]', 'D'],
  ['[C3, E3, G3]', 'C'],
  ['[G2, D3, A3, E4]', undefined],
  ['[E2, A2, D3, G3, B3, E4]', undefined],
  ['[A2]', undefined],
])('the strings %s sound the chord %s', (strings, chord) => {
  expect(openChord(planOf(`title: A\nstrings: ${strings}`).build.values)).toBe(chord)
})
