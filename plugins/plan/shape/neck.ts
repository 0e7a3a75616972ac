import type {z} from 'zod'
import {list, n, open, s} from './kit.ts'

export const sectionShape = open({
  stationMm: n,
  widthMm: n,
  thicknessMm: n,
  areaMm2: n,
  neutralAxisMm: n.describe('From the playing face.'),
  eiNmm2: n,
  massPerLengthKgM: n,
  laminations: list(open({wood: s, thicknessMm: n, widthMm: n, fromFaceMm: n})),
})

export const bowShape = open({
  fromMm: n,
  toMm: n,
  reliefMm: n,
  reliefAfterCreepMm: n,
  rangeMm: list(n).describe('Low, high.'),
  why: s,
})

export const budgetShape = open({
  headMm: n,
  scaleMm: n,
  tailMm: n.describe('What anchors and box need past the bridge line.'),
  lengthMm: n,
  spareMm: n.describe('What neck.length leaves over; negative: too short.').optional(),
  blankMm: n.describe('The stick to start from.').optional(),
})

export const scarfShape = open({
  angleDeg: n,
  thicknessMm: n.describe('What is really sawn.'),
  faceMm: n,
  runMm: n,
  glueAreaMm2: n,
  stringAngleDeg: list(n).optional(),
})

export const neckShape = open({
  sections: list(sectionShape).optional(),
  bow: bowShape.optional(),
  massKg: n.optional(),
  balanceMm: n.optional(),
  budget: budgetShape.optional(),
  scarf: scarfShape.optional(),
  stringAngleDeg: list(n).describe("Each string's own angle behind the nut.").optional(),
})

export type NeckSection = z.infer<typeof sectionShape>
export type Bow = z.infer<typeof bowShape>
export type Budget = z.infer<typeof budgetShape>
export type Scarf = z.infer<typeof scarfShape>
export type Neck = z.infer<typeof neckShape>
