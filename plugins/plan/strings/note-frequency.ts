/**
 * Give the frequency (Hz) of a pitch in equal semitones from A4, `midi` 69.
 * Source: ISO 16:1975 for A4 = 440 Hz.
 */
export function noteFrequencyHz(midi: number, referenceHz: number): number {
  return referenceHz * 2 ** ((midi - 69) / 12)
}
