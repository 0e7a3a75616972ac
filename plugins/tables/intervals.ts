/**
 * The pure intervals of the octave that a slide can stop at.
 *
 * Source: five-limit just intonation, as in any list of just ratios; the harmonic seventh 7/4 besides.
 */
interface JustIntervalRow {
  name: string
  over: number
  under: number
}

// biome-ignore format: a line each
export const justIntervals: readonly JustIntervalRow[] = [
  {name: 'major second', over: 9, under: 8},
  {name: 'minor third', over: 6, under: 5},
  {name: 'major third', over: 5, under: 4},
  {name: 'fourth', over: 4, under: 3},
  {name: 'fifth', over: 3, under: 2},
  {name: 'major sixth', over: 5, under: 3},
  {name: 'harmonic seventh', over: 7, under: 4},
  {name: 'minor seventh', over: 9, under: 5},
  {name: 'major seventh', over: 15, under: 8},
  {name: 'octave', over: 2, under: 1},
]

/**
 * Semitones above the open string of the seven frets of a diatonic fingerboard's first octave; the next octave
 * repeats them. The open string begins a Mixolydian scale, the third fret is the tonic of the Ionian and the first
 * that of the Aeolian; a fret half a step below the octave is called 6 1/2.
 * Source: common practice, no source; agrees with what reference works say of the Appalachian dulcimer.
 */
export const diatonicFrets: readonly number[] = [2, 4, 5, 7, 9, 10, 12]

/**
 * Tunings that small box instruments are commonly given, by how many strings: semitones above the lowest string.
 * Common practice, no source.
 */
interface TuningRow {
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

/**
 * Tunings whose first string is a high one, struck by the thumb: semitones above the lowest string, in the order of
 * the strings. Common practice, no source.
 */
export const highFirstTunings: readonly (readonly number[])[] = [
  [7, 0, 4, 9],
  [17, 0, 5, 9, 12],
]
