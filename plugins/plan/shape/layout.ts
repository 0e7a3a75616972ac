import type {z} from 'zod'
import {list, n, open, s} from './kit.ts'

export const stationShape = open({
  kind: s.describe(
    'head end, tuner, slope, nut, line, dot, round-over, box edge, screw, sound hole, bridge, anchor or tail end.',
  ),
  what: s.describe('In a maker’s words.'),
  stationMm: n.describe('From the nut line; behind it negative, along the head’s own face.'),
  offMm: list(n).describe('Off the centre line, where that matters.').optional(),
  fromHeadMm: n.describe('From the head end.').optional(),
  fromTailMm: n.describe('From the tail end.').optional(),
  mark: s.describe('The nearest mark of the maker’s ruler.'),
  markErrorMm: n.describe('Mark less the exact place.'),
})

export type Station = z.infer<typeof stationShape>
