import type {z} from 'zod'
import {flag, n, open, s} from './kit.ts'

export const jackShape = open({
  holeMm: n.optional(),
  face: s.describe('The wall it stands in.'),
  stationMm: n.optional(),
  offMm: n,
  isProposed: flag.describe('The file does not place it: a place with room.'),
  wallMm: n.optional(),
  threadMm: n.optional(),
  leastThreadMm: n.describe('The wall and 1/8 in for the nut.').optional(),
  bodyMm: n.describe('Behind the wall’s outer face.').optional(),
  roomMm: n.describe('Behind the wall’s outer face.').optional(),
})

export const pickupShape = open({
  kind: s.optional(),
  under: s.optional(),
  stationMm: n.optional(),
  offMm: n.optional(),
  diameterMm: n.optional(),
  thicknessMm: n.optional(),
  largestMm: n.describe('The widest disc that fits there.').optional(),
  against: s.describe('What it would run into first.').optional(),
  capacitanceNf: n.optional(),
  cornerHz: n.describe('Below this it fades into a load of 1 MΩ.').optional(),
  cornerLowHz: n.describe('The same into a load of 50 kΩ.').optional(),
  jack: jackShape.optional(),
})

export type Pickup = z.infer<typeof pickupShape>
export type Jack = z.infer<typeof jackShape>
