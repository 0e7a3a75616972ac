/**
 * Semitones above the open string of the seven frets of a diatonic fingerboard's first octave; the next octave
 * repeats them. The open string begins a Mixolydian scale, the third fret is the tonic of the Ionian and the first
 * that of the Aeolian; a fret half a step below the octave is called 6 1/2.
 * Source: common practice, no source; agrees with what reference works say of the Appalachian dulcimer.
 */
export const diatonicFrets: readonly number[] = [2, 4, 5, 7, 9, 10, 12]
