import {z} from 'zod'
import {boxShape} from './box.ts'
import {anchorRowShape, fastenerShape, holeShape, placedShape, screwPlaceShape} from './holes.ts'
import {list, n, open, s} from './kit.ts'
import {stationShape} from './layout.ts'
import {neckShape} from './neck.ts'
import {outlineShape} from './outline.ts'
import {pickupShape} from './pickup.ts'
import {scaleShape} from './scale.ts'
import {cutsShape, stockTroubleShape} from './stock.ts'
import {actionShape, bridgeShape, intonationShape, stringShape, tuningShape} from './strings.ts'
import {
  asBuiltShape,
  billShape,
  cautionShape,
  costShape,
  settingUpShape,
  workShape,
  workTimeShape,
} from './work.ts'

export const assumptionShape = open({
  path: s,
  value: s.describe('As a maker would write it.'),
  why: s,
})

export const problemShape = open({
  rule: s,
  severity: z.enum(['error', 'fault', 'warning', 'remark']),
  line: n,
  column: n,
  endLine: n,
  endColumn: n,
  message: s,
  expected: list(s).optional(),
  note: s.optional(),
  cause: open({line: n, column: n}).optional(),
})

/** All that is computed from a build. Lengths in mm, forces in N; a part whose inputs are missing is absent. */
export const planShape = open({
  slug: s,
  title: s.optional(),
  status: s.optional(),
  play: s.optional(),
  units: z.enum(['in', 'mm']),
  rulerMm: n.describe('The finest mark that the maker works to.'),
  handed: z.enum(['right', 'left']),
  assumptions: list(assumptionShape),
  scale: scaleShape.optional(),
  strings: list(stringShape).optional(),
  layout: list(stationShape).describe('Every station in order, head end to tail end.').optional(),
  tensionTotalN: n.optional(),
  tunings: list(tuningShape).describe('Other common tunings that these gauges carry.').optional(),
  bridge: bridgeShape.optional(),
  intonation: list(intonationShape).optional(),
  action: actionShape.optional(),
  neck: neckShape.optional(),
  box: boxShape.optional(),
  tuners: list(placedShape).optional(),
  anchors: list(placedShape).optional(),
  screws: list(screwPlaceShape).optional(),
  anchorRow: anchorRowShape.optional(),
  holes: list(holeShape).optional(),
  fasteners: list(fastenerShape).optional(),
  pickup: pickupShape.optional(),
  work: list(workShape).describe('In an order that works.').optional(),
  workTime: workTimeShape.optional(),
  cuts: cutsShape.optional(),
  tooManyParts: open({count: n, most: n}).describe('More parts than can be planned.').optional(),
  stockTroubles: list(stockTroubleShape).optional(),
  bill: list(billShape).optional(),
  cost: costShape.optional(),
  cautions: list(cautionShape).optional(),
  asBuilt: list(asBuiltShape).optional(),
  settingUp: list(settingUpShape).optional(),
  unknownWoods: list(open({path: s, wood: s, nearest: s.optional()})).optional(),
  outline: outlineShape.describe('What drawings and templates are drawn from.').optional(),
})

export const printedPlanShape = open({slug: s, problems: list(problemShape)})

export type Plan = z.infer<typeof planShape>
export type Assumption = z.infer<typeof assumptionShape>
