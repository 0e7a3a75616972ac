import type {z} from 'zod'
import {flag, list, n, open, s} from './kit.ts'

export const lineShape = open({
  n: n.describe('Counts the lines from the nut, from 1.'),
  label: s.describe('As players number it.'),
  semitones: n.describe('Above the open string.'),
  cents: n.describe('Above the open string, by the temperament.'),
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
  pattern: s,
  temperament: s,
  lines: list(lineShape).optional(),
  dots: list(dotShape).optional(),
  worstMarkErrorCents: n
    .describe('The largest error, of either sign, that the ruler’s rounding makes.')
    .optional(),
})

export type Scale = z.infer<typeof scaleShape>
export type Line = z.infer<typeof lineShape>
export type Dot = z.infer<typeof dotShape>
