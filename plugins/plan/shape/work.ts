import type {z} from 'zod'
import {flag, list, n, open, s} from './kit.ts'

export const workShape = open({
  id: s,
  kind: s.describe('What the steps of one kind share; the id, or the start of it.'),
  step: s.describe('What it is called.'),
  does: s,
  tool: s.optional(),
  setting: s.optional(),
  stations: list(
    open({
      what: s,
      stationMm: n,
      offMm: n.describe('Off the centre line, of a hole.').optional(),
      face: s.describe('Of a hole.').optional(),
      bit: s.optional(),
      depthMm: n.optional(),
    }),
  ),
  waitH: n.optional(),
  waitFrom: s.describe('Where the waiting time comes from.').optional(),
  meanwhile: list(s).describe('Ids of later steps that need not wait for it.').optional(),
  after: list(s),
  cautions: list(s).describe('Ids of the cautions that belong to it.'),
  check: s.optional(),
  isDone: flag.describe('The journal names it, or a step that comes after it, or says that it is strung up.'),
})

export const workTimeShape = open({
  waitH: n.describe('The longest chain of waits: what cannot be had sooner.'),
  waitsH: n.describe('All waits, one after the other.'),
  benchH: n.describe('What the days of the journal add up to.').optional(),
})

export const cautionShape = open({
  id: s,
  hazard: s,
  because: s,
  does: s,
  source: s,
})

export const settingUpShape = open({
  find: s,
  does: s,
  amountMm: n.describe('How far: down, deeper or away from the nut; negative the other way.').optional(),
  cause: s.describe('Of a fault.').optional(),
  because: s.describe('Why this build makes that fault likely.').optional(),
})

export const asBuiltShape = open({
  path: s,
  planned: n.optional(),
  measured: n,
  difference: n.optional(),
  tolerance: n.describe('How far it may be off, in the same unit.').optional(),
  toleranceFrom: s.describe('Where that comes from.').optional(),
  isOut: flag.describe('Further off than that.').optional(),
  unit: s.describe('mm, deg, N, cents or Hz.'),
  effects: list(s),
})

export const billShape = open({
  item: s,
  count: n,
  each: n.optional(),
  total: n.optional(),
  from: s,
})
export const costShape = open({
  materials: n.describe('What has a price, summed; absent where nothing has.').optional(),
  hours: n.describe('What the days of the journal add up to; work has no price.'),
  total: n.describe('The materials.').optional(),
  currency: s.optional(),
})

export type WorkTime = z.infer<typeof workTimeShape>
export type Step = z.infer<typeof workShape>
export type Caution = z.infer<typeof cautionShape>
export type SettingUp = z.infer<typeof settingUpShape>
export type AsBuilt = z.infer<typeof asBuiltShape>
export type BillRow = z.infer<typeof billShape>
export type Cost = z.infer<typeof costShape>
