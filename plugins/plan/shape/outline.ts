import type {z} from 'zod'
import {list, n, open, s} from './kit.ts'

// What a drawing needs of the design, in mm from the nut line and off the centre line.

export const roundHoleShape = open({stationMm: n, offMm: n, diameterMm: n})

export const blockOutlineShape = open({
  stationMm: n.describe('Its middle.'),
  offMm: n.describe('Its middle.'),
  lengthMm: n,
  widthMm: n,
  thicknessMm: n.optional(),
  glued: s.optional(),
})

export const outlineShape = open({
  neck: open({
    tailMm: n.describe('Where the stick ends.'),
    nutWidthMm: n,
    tailWidthMm: n,
    thicknessMm: n.describe('Playing face to back, all layers.'),
    joins: s,
    aboveTopMm: n.describe('Playing face above the top at the box’s edge.').optional(),
    tiltDeg: n,
    fingerboard: open({fromMm: n, toMm: n, thicknessMm: n}).optional(),
    roundOver: open({radiusMm: n, fromMm: n, toMm: n}).optional(),
  }).optional(),
  head: open({
    lengthMm: n.describe('Nut line to head end, along its own face.'),
    widthMm: n,
    thicknessMm: n,
    joint: s,
    angleDeg: n,
    ledgeMm: n,
    dropMm: n,
  }).optional(),
  box: open({
    atMm: n,
    lengthMm: n,
    widthMm: n,
    depthMm: n,
    sidesMm: n,
    topMm: n,
    backMm: n,
  }).optional(),
  soundHoles: list(roundHoleShape).optional(),
  blocks: list(blockOutlineShape).optional(),
  nut: open({kind: s, alongMm: n.describe('What it takes along the neck.')}).optional(),
  bridge: open({kind: s, lengthMm: n, footMm: n, risesMm: n.optional()}).optional(),
  tuners: list(
    open({side: s.describe('bass or treble.'), postHoleMm: n, buttonMm: n, stringHeightMm: n.optional()}),
  ).optional(),
  anchors: open({kind: s, bodyMm: n, stringHoleMm: n, heightMm: n.optional()}).optional(),
  strings: list(open({name: s.optional(), nutOffMm: n, bridgeOffMm: n})).optional(),
})

export type Outline = z.infer<typeof outlineShape>
export type RoundHole = z.infer<typeof roundHoleShape>
export type BlockOutline = z.infer<typeof blockOutlineShape>
