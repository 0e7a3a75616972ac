/** How long glue and finish are left alone, in hours. The label of what is in the tin goes before all of these. */
export interface WaitRow {
  /** Names it in the build file, by any of these words. */
  words: readonly string[]
  /** In the clamps; for a finish, between two coats. */
  firstH: number
  /** Until the next step may load it. */
  lastH: number
}

export const waitSource = 'common practice, no source; the label goes first'

// biome-ignore format: a line each
export const glueWaits: readonly WaitRow[] = [
  {words: ['epoxy'], firstH: 12, lastH: 24},
  {words: ['hide', 'bone', 'fish'], firstH: 12, lastH: 24},
  {words: ['ca', 'cyano*', 'superglue', 'super glue'], firstH: 0.25, lastH: 1},
  {words: ['pu', 'polyurethane'], firstH: 4, lastH: 24},
]

/** White or yellow wood glue, which is what is meant where the file names none. */
export const usualGlue: WaitRow = {words: [], firstH: 1, lastH: 24}

export interface FinishRow extends WaitRow {
  name: string
  /** Lower goes on first: oil soaks into bare wood only, and nothing holds on wax. */
  order: number
}

// biome-ignore format: a line each; the first whose word is met counts
export const finishWaits: readonly FinishRow[] = [
  {name: 'stain', words: ['stain*', 'dye*'], order: 0, firstH: 4, lastH: 24},
  {name: 'varnish', words: ['varnish*', 'polyurethane'], order: 3, firstH: 24, lastH: 72},
  {name: 'lacquer', words: ['lacquer*', 'nitro*'], order: 3, firstH: 2, lastH: 168},
  {name: 'paint', words: ['paint*'], order: 3, firstH: 4, lastH: 48},
  {name: 'shellac', words: ['shellac*', 'french polish'], order: 2, firstH: 2, lastH: 24},
  {name: 'wax', words: ['wax*'], order: 4, firstH: 1, lastH: 1},
  {name: 'oil', words: ['oil*', 'tung', 'linseed'], order: 1, firstH: 24, lastH: 72},
]

export const usualFinish: FinishRow = {name: 'other', words: [], order: 3, firstH: 24, lastH: 72}
