import type {z} from 'zod'
import {flag, list, n, open, s} from './kit.ts'

export const lineShape = open({
  n: n.describe('Counts the lines from the nut, from 1.'),
  label: s.describe('As players number it.'),
  semitones: n.describe('Above the open string.'),
  cents: n.describe('Above the open string, by the temperament.'),
  offEqualCents: n.describe('Sharp of equal semitones.').optional(),
  fromNutMm: n.describe('L·(1 − 1/r).'),
  fromPreviousMm: n,
  mark: s.describe("The nearest mark of the maker's ruler, as a text."),
  markMm: n,
  markErrorMm: n.describe('Mark less the exact place.'),
  markErrorCents: n.describe('1200·log2((L − fromNutMm)/(L − markMm)); positive when sharp.'),
  widthMm: n.describe('The neck there.').optional(),
  stringOffMm: list(n).describe('Where each string crosses, off the centre line.').optional(),
  overBox: flag.optional(),
})

export const dotShape = open({
  label: s,
  stationMm: n,
  count: n.describe('Two at the octave.'),
  side: s.describe('bass or treble: the player’s edge.'),
})

export const scaleShape = open({
  lengthMm: n.optional(),
  longestMm: n.describe('Where no length is given: the longest that stick and box allow.').optional(),
  fretted: flag,
  pattern: s.describe('chromatic, diatonic, or the semitones as the file lists them.').optional(),
  temperament: s.describe('equal, or the steps as the file lists them.').optional(),
  nutOffMm: list(n).describe('Where each string crosses the nut line, off the centre line.').optional(),
  bridgeOffMm: list(n).describe('Where each string crosses the bridge line, off the centre line.').optional(),
  lines: list(lineShape).optional(),
  dots: list(dotShape).optional(),
  bridgeFrontMm: n
    .describe('The bridge’s edge on the nut’s side, half its foot before the bridge line.')
    .optional(),
  worstMarkErrorCents: n
    .describe('The largest error, of either sign, that the ruler’s rounding makes.')
    .optional(),
  worstMarkLabel: s.describe('The line that has it.').optional(),
  noticeableCents: n.describe('The least difference of pitch that ears notice.').optional(),
  rulers: list(open({mm: n, text: s, worstCents: n, worstLabel: s}))
    .describe('What other rulers’ marks would do at worst, coarsest first.')
    .optional(),
  rulerNeeded: open({mm: n, text: s})
    .describe('The coarsest mark that keeps every line within what ears notice.')
    .optional(),
  justMarks: list(open({name: s, ratio: s, cents: n, fromNutMm: n, mark: s}))
    .describe('Where the pure intervals lie along a fretless neck.')
    .optional(),
})

export type Scale = z.infer<typeof scaleShape>
export type Line = z.infer<typeof lineShape>
export type Dot = z.infer<typeof dotShape>
