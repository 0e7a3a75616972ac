import type {z} from 'zod'
import {flag, list, n, open, s} from './kit.ts'

export const stringShape = open({
  name: s.describe('Its note; a second one D4-2.'),
  note: s,
  frequencyHz: n,
  gaugeMm: n.optional(),
  gauge: s.describe('As written.').optional(),
  wound: flag.optional(),
  material: s.optional(),
  course: n.describe('How many strings run together.'),
  massPerLengthKgM: n.optional(),
  massFrom: s.describe('mass, tension, plain or wound: where the mass per length comes from.').optional(),
  coreMm: n.optional(),
  tensionN: n.describe('T = μ(2Lf)², of one string.').optional(),
  stressMpa: n.optional(),
  breakFraction: n.optional(),
  breakKnown: flag.optional(),
  stretchMm: n.optional(),
  inharmonicity: n.describe('B in f_n = n·f_0·√(1 + B·n²).').optional(),
  pull: s.describe('slack, easy, firm or stiff.').optional(),
  lengthNeededMm: n.optional(),
  alternatives: list(open({gauge: s, tensionN: n})).optional(),
})

export const setbackShape = open({
  name: s,
  setbackMm: n.describe('The saddle’s setback alone; positive: longer string.'),
  rmsCents: n,
  together: open({
    saddleMm: n,
    nutMm: n.describe('Negative moves the nut towards the lines.'),
    rmsCents: n,
  }),
})

export const bridgeShape = open({
  stationMm: n,
  alongMm: n.optional(),
  on: s.describe('neck or top.').optional(),
  heightMm: n.describe('From what it stands on.').optional(),
  breakAngleDeg: n.optional(),
  downforceN: n.optional(),
  setbacks: list(setbackShape).optional(),
})

export const intonationShape = open({
  name: s,
  plainCents: list(n).describe('By line, nut and saddle where the scale length puts them.'),
  compensatedCents: list(n).describe('By line, with the saddle set back.'),
})

export const actionShape = open({
  nutMm: n,
  octaveMm: n,
  bridgeHeightMm: n.describe('Above the playing face.'),
  atLinesMm: list(list(n)).describe('By string, then line.').optional(),
})

export type StringPlan = z.infer<typeof stringShape>
export type Setback = z.infer<typeof setbackShape>
export type Bridge = z.infer<typeof bridgeShape>
export type Intonation = z.infer<typeof intonationShape>
export type Action = z.infer<typeof actionShape>
