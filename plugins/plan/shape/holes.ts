import type {z} from 'zod'
import {n, open, s} from './kit.ts'

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
})

export const placedShape = open({name: s.optional(), stationMm: n, offMm: n})

export const screwPlaceShape = open({
  of: s.describe('The row of the build file it comes from.'),
  stationPath: s.describe('Where the build file says how far along it stands.'),
  offPath: s,
  stationMm: n,
  offMm: n,
})

export const fastenerShape = open({
  size: n,
  into: s,
  shankMm: n,
  clearanceMm: n,
  clearanceBit: s,
  pilotMm: n,
  pilotBit: s,
  underHeadMm: n,
  threadMm: n,
  tipToFaceMm: n.describe('Negative: it comes out.'),
  longestMm: n,
  withdrawalN: n,
  loadN: n,
})

export type Hole = z.infer<typeof holeShape>
export type Placed = z.infer<typeof placedShape>
export type Fastener = z.infer<typeof fastenerShape>
