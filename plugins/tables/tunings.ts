/**
 * Tunings that small box instruments are commonly given, by how many strings: semitones above the lowest string.
 * Common practice, no source.
 */
export interface TuningRow {
  name: string
  semitones: readonly number[]
}

// biome-ignore format: a line each
export const tunings: readonly TuningRow[] = [
  {name: 'root and fifth', semitones: [0, 7]},
  {name: 'root and octave', semitones: [0, 12]},
  {name: 'root and fourth', semitones: [0, 5]},
  {name: 'root, fifth, octave', semitones: [0, 7, 12]},
  {name: 'root, fourth, octave', semitones: [0, 5, 12]},
  {name: 'root, fifth, tenth', semitones: [0, 7, 16]},
  {name: 'major chord', semitones: [0, 4, 7]},
  {name: 'two alike and a fifth below', semitones: [0, 7, 7]},
  {name: 'fifths', semitones: [0, 7, 14]},
  {name: 'fourths', semitones: [0, 5, 10]},
  {name: 'root, fifth, octave, tenth', semitones: [0, 7, 12, 16]},
  {name: 'root, fifth, octave, twelfth', semitones: [0, 7, 12, 19]},
  {name: 'root, fourth, octave, tenth', semitones: [0, 5, 12, 16]},
  {name: 'fifths', semitones: [0, 7, 14, 21]},
  {name: 'open chord over its fifth', semitones: [0, 5, 9, 12]},
  {name: 'guitar’s upper four', semitones: [0, 5, 9, 14]},
  {name: 'fourths', semitones: [0, 5, 10, 15]},
  {name: 'fifths', semitones: [0, 7, 14, 21, 28]},
  {name: 'open major chord', semitones: [0, 7, 12, 16, 19]},
  {name: 'guitar', semitones: [0, 5, 10, 15, 19, 24]},
  {name: 'open major chord', semitones: [0, 7, 12, 16, 19, 24]},
  {name: 'open chord over its fifth', semitones: [0, 5, 12, 17, 21, 24]},
]
