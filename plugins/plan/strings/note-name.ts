const letters = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B']

/** Name a pitch by its letter, # where it needs one, and octave: 62 is `D4`. */
export function noteName(midi: number): string {
  return `${letters[((midi % 12) + 12) % 12]}${Math.floor(midi / 12) - 1}`
}
