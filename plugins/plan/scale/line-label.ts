import {diatonicFrets} from '../../tables/intervals.ts'

/**
 * Name a line of a diatonic fingerboard as its players do, by semitones above the open string: 12 is `7`, and
 * what lies between two frets is a half, so 11 is `6 1/2`.
 */
export function diatonicLabel(semitones: number): string {
  const octaves = Math.floor((semitones - 1) / 12)
  const within = semitones - 12 * octaves
  const below = 7 * octaves + diatonicFrets.filter((fret) => fret <= within).length
  if (diatonicFrets.includes(within)) return `${below}`
  return below === 0 ? '1/2' : `${below} 1/2`
}

/** Say whether a list of lines has every diatonic fret as far as it goes, and nothing finer than a semitone. */
export function isDiatonic(semitones: readonly number[]): boolean {
  const last = semitones.at(-1) ?? 0
  const has = new Set(semitones)
  const isChromatic = semitones.length === last
  return !isChromatic && semitones.every(Number.isInteger) && wholeFrets(last).every((fret) => has.has(fret))
}

function wholeFrets(last: number): number[] {
  return Array.from({length: Math.ceil(last / 12)}, (_, octave) =>
    diatonicFrets.map((fret) => fret + 12 * octave),
  )
    .flat()
    .filter((fret) => fret <= last)
}
