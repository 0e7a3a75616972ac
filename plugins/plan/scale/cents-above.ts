/**
 * Give the cents of a line above the open string. `steps` are the twelve steps of one octave in cents, the twelfth
 * the octave, which every octave repeats; without them semitones are equal. Between two steps, straight.
 */
export function centsAbove(semitones: number, steps?: readonly number[]): number {
  if (!steps) return 100 * semitones
  const below = Math.floor(semitones)
  const step = (n: number) => Math.floor(n / 12) * steps[11]! + (n % 12 === 0 ? 0 : steps[(n % 12) - 1]!)
  const part = semitones - below
  return part === 0 ? step(below) : step(below) + part * (step(below + 1) - step(below))
}
