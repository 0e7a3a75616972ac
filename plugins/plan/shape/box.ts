import type {z} from 'zod'
import {n, open, s} from './kit.ts'

export const boxShape = open({
  atMm: n.describe('Its head-side edge, from the nut.').optional(),
  tailMm: n.describe('Its tail edge, from the nut.').optional(),
  bridgeFraction: n.describe('The bridge line along the box, 0 at the head side.').optional(),
  atByTailMm: n
    .describe('Where bridge.from-tail would put the head-side edge, where box.at places it too.')
    .optional(),
  volumeL: n.optional(),
  holeAreaMm2: n.optional(),
  resonanceHz: n.optional(),
  resonanceLowHz: n.optional(),
  nearestNote: s.optional(),
})

export type Box = z.infer<typeof boxShape>
