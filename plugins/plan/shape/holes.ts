import type {z} from 'zod'
import {flag, list, n, open, s} from './kit.ts'

export const holeShape = open({
  what: s,
  face: s,
  stationMm: n,
  alongMm: n.optional(),
  offMm: n,
  diameterMm: n,
  depthMm: n.describe('Absent when it goes through.').optional(),
  bit: s.optional(),
  backing: s.optional(),
  of: s.describe('The path of the build file it comes from.'),
  isProposed: flag.describe('The file does not place it: a place with room.').optional(),
})

export const placedShape = open({name: s.optional(), stationMm: n, offMm: n})

export const screwPlaceShape = open({
  of: s.describe('The row of the build file it comes from.'),
  stationPath: s.describe('Where the build file says how far along it stands.'),
  offPath: s,
  stationMm: n,
  offMm: n,
})

const wouldDoShape = open({path: s, mm: n}).describe('What to change in the build file, and to what.')

export const fastenerShape = open({
  of: s.describe('The row of the build file it comes from.'),
  stationMm: n,
  offMm: n,
  size: n,
  lengthMm: n,
  through: list(s).describe('From the head on.'),
  into: s,
  way: s.describe('up towards the playing face, down from it, or along the neck.'),
  head: s.describe('flat or round.').optional(),
  wood: s.describe('What the tip sits in.').optional(),
  hardness: s.describe('soft or hard: what the pilot is sized by.'),
  shankMm: n,
  rootMm: n.describe('Mid-thread average of a tapered screw.'),
  rootDesignMm: n.describe('The larger one of the design tables.').optional(),
  clearanceMm: n,
  clearanceBit: s,
  pilotMm: n,
  pilotBit: s,
  pilotBitMm: n,
  countersinkMm: n.describe('Across a flat head.').optional(),
  underHeadMm: n.describe('Wood under the head.'),
  leastUnderHeadMm: n.describe('Without block or washer.'),
  hasPad: flag.describe('A block or a washer spreads its head.'),
  joinsNeck: flag,
  threadMm: n.describe('Thread that bites.'),
  leastThreadMm: n,
  shortestMm: n.describe('The shortest with enough thread.'),
  tipToFaceMm: n.describe('Negative: it comes out.').optional(),
  longestMm: n.describe('The longest that stays 1/8 in below the far face.').optional(),
  farFace: s.describe('What it would come out through.').optional(),
  withdrawalN: n,
  loadN: n.describe('What the strings draw it by.').optional(),
  isGlued: flag.describe('The joint is glued as well.'),
  sizeForLoad: n.describe('The smallest gauge that holds three times the load.').optional(),
  edge: open({piece: s, isEnd: flag, gapMm: n, needsMm: n, wouldDo: wouldDoShape.optional()})
    .describe('Where it stands too near an edge or an end.')
    .optional(),
  offBox: wouldDoShape.optional(),
  astray: open({wouldDo: wouldDoShape.optional()})
    .describe('It is to go through or into a block, and none is there.')
    .optional(),
})

export const anchorRowShape = open({
  bodyMm: n,
  woodMm: n.describe('Between neighbours and out to an edge, at least.'),
  betweenMm: n.optional(),
  closestMm: n.describe('The closest spacing.').optional(),
  edgeMm: n.describe('Wood outside the outer ones.').optional(),
  widestMm: n.describe('The widest spacing.').optional(),
  stringMm: n.describe('The thickest string.').optional(),
  ballMm: n.describe('Where ball ends hold: a ball, at the least.').optional(),
  isSoft: flag.describe('The strings would cut into bare wood here.').optional(),
})

export type Hole = z.infer<typeof holeShape>
export type Placed = z.infer<typeof placedShape>
export type Fastener = z.infer<typeof fastenerShape>
export type ScrewPlace = z.infer<typeof screwPlaceShape>
