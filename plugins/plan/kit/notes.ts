/**
 * Give the frequency (Hz) of a pitch in equal semitones from A4, `midi` 69.
 * Source: ISO 16:1975 for A4 = 440 Hz.
 */
export function noteFrequencyHz(midi: number, referenceHz: number): number {
  return referenceHz * 2 ** ((midi - 69) / 12)
}

const letters = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B']

/** Name a pitch by its letter, # where it needs one, and octave: 62 is `D4`. */
export function noteName(midi: number): string {
  return `${letters[((midi % 12) + 12) % 12]}${Math.floor(midi / 12) - 1}`
}
