/**
 * The pure intervals of the octave that a slide can stop at.
 *
 * Source: five-limit just intonation, as in any list of just ratios; the harmonic seventh 7/4 besides.
 */
export interface JustIntervalRow {
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
