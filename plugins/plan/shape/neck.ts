import type {z} from 'zod'
import {flag, list, n, open, s} from './kit.ts'

const wouldDo = open({path: s, mm: n}).describe('The value to change, and what would do, in mm.')

export const sectionShape = open({
  stationMm: n,
  what: s.describe('What is there.').optional(),
  widthMm: n,
  thicknessMm: n,
  areaMm2: n,
  neutralAxisMm: n.describe('From the playing face.').optional(),
  eiNmm2: n.describe('Absent until the woods are known.').optional(),
  massPerLengthKgM: n.optional(),
  laminations: list(
    open({
      wood: s,
      thicknessMm: n,
      widthMm: n,
      fromFaceMm: n,
      strips: n.describe('Glued up from so many side by side.').optional(),
    }),
  ),
})

export const bowShape = open({
  fromMm: n,
  toMm: n,
  reliefMm: n.describe('The likely hollow, of the neck that the box does not help.'),
  reliefAfterCreepMm: n,
  rangeMm: list(n).describe('Low, high.'),
  why: s,
  atLinesMm: list(n).describe('The likely hollow at each line.').optional(),
  bucklingMargin: n.describe('What would buckle the neck, over the pull.').optional(),
  tooLow: open({
    line: n.describe('Counted from 0.'),
    label: s,
    bowMm: n,
    actionMm: n,
    wouldDo: wouldDo.optional(),
  })
    .describe('The line where the bow is more than the strings’ height.')
    .optional(),
})

export const budgetShape = open({
  headMm: n,
  scaleMm: n.describe('The scale length, or as much of it as a neck that ends at the box spans.'),
  tailMm: n.describe('What anchors and box need past the bridge line.'),
  anchorsMm: n.describe('What the anchors need.').optional(),
  boxMm: n.describe('What the box needs.').optional(),
  lengthMm: n,
  neededMm: n.describe('Head, scale and tail together.'),
  needs: s.describe('What it is that needs the tail, in words.'),
  holdsAnchors: flag.describe('Long enough for the anchors, whatever the box needs.').optional(),
  spareMm: n.describe('What neck.length leaves over; negative: too short.').optional(),
  blankMm: n.describe('The stick to start from.').optional(),
  squareMm: n.describe('Of it, what is squared off at each end.').optional(),
  blankThicknessMm: n.describe('How thick a stick a head sawn out of the solid takes.').optional(),
  blankGainMm: n.describe('What the stick gains by the bend of a scarf.').optional(),
  blankKerfMm: n.describe('What the scarf’s saw cut takes.').optional(),
})

export const scarfShape = open({
  angleDeg: n,
  thicknessMm: n.describe('What is really sawn.'),
  faceMm: n,
  runMm: n,
  slope: n.describe('The run for a rise of one.'),
  fromSquareDeg: n.describe('What a mitre gauge reads that counts from square.'),
  leastDeg: n.describe('The flattest usual angle.'),
  mostDeg: n.describe('The steepest.'),
  glueAreaMm2: n,
  glueForceN: n.describe('The strings’ pull along the glue line.').optional(),
  glueStressMpa: n.optional(),
  stringAngleDeg: list(n).optional(),
})

export const headShape = open({
  joint: s,
  angleDeg: n,
  lengthMm: n,
  ledgeMm: n,
  thicknessMm: n,
  widthMm: n.optional(),
  leastMm: n.describe('The thinnest head that the tuners fit.').optional(),
  mostMm: n.describe('The thickest.').optional(),
  retainer: s.optional(),
  pilotMm: n.describe('The first, small hole for a post.').optional(),
  conflicts: list(
    open({
      kind: s.describe('edge, holes, buttons, cross or foul.'),
      post: n.describe('Counted from 0.'),
      other: n.optional(),
      gapMm: n,
      needsMm: n,
      wouldDo: wouldDo.optional(),
    }),
  ).optional(),
})

export const movementShape = open({
  widthMm: n,
  perPercent: open({quarterMm: n, flatMm: n, glueLineMm: n.optional()}).describe('For 1 % of moisture.'),
  season: open({fromPercent: n, toPercent: n, quarterMm: n, flatMm: n, glueLineMm: n.optional()}).optional(),
})

export const frettingShape = open({
  slotWidthMm: n.optional(),
  slotDepthMm: n.optional(),
  fitMm: n.describe('Slot less tang.').optional(),
  inMm: n.describe('How thick the layer is that the slots are sawn in.').optional(),
  pieces: list(open({label: s, lengthMm: n})).optional(),
  wireMm: n.describe('The wire to buy.').optional(),
  overhangMm: n,
})

export const neckShape = open({
  sections: list(sectionShape).optional(),
  bow: bowShape.optional(),
  massKg: n.optional(),
  balanceMm: n.optional(),
  budget: budgetShape.optional(),
  scarf: scarfShape.optional(),
  stringAngleDeg: list(n).describe("Each string's own angle behind the nut.").optional(),
  flattest: open({string: n.describe('Counted from 0.'), angleDeg: n, leastDeg: n})
    .describe('The string that goes down least, where that is too little.')
    .optional(),
  steepest: open({string: n.describe('Counted from 0.'), angleDeg: n, mostDeg: n})
    .describe('The string that goes down most, where that is too much.')
    .optional(),
  gentlerHead: open({angleDeg: n.optional(), dropMm: n.optional()})
    .describe('The head at which no string goes down too steeply.')
    .optional(),
  head: headShape.optional(),
  layup: open({
    layers: list(
      open({
        of: s.describe('Its path in the build file.'),
        wood: s.optional(),
        isWoodKnown: flag.describe('Its density and stiffness are known.'),
        thicknessMm: n.describe('As planed.'),
        fromMm: n.optional(),
        toMm: n.optional(),
        beforeScarf: flag,
        strips: n.optional(),
      }),
    ).describe('From the playing face down.'),
    stickMm: n.describe('Without fingerboard and cap.'),
    totalMm: n.describe('Playing face to back.'),
    laminationsMm: n.optional(),
    wantedMm: n.optional(),
    planedMm: n.optional(),
    overMm: n.optional(),
    mostOverMm: n.optional(),
    wouldDo: wouldDo.optional(),
  }).optional(),
  roundOver: open({
    radiusMm: n,
    fromMm: n,
    toMm: n,
    runInMm: n.describe('How far the cutter takes to full depth.'),
    flatMm: n.describe('Flat side left for the cutter’s bearing.'),
    bearingNeedsMm: n,
    largestMm: n.describe('The largest radius that leaves enough.'),
  }).optional(),
  edges: open({
    nutMm: n.describe('From an outer string to the edge.'),
    edgeLeastMm: n,
    neighbourLeastMm: n.describe('Between strings, where fingers go.'),
    lastLineMm: n.optional(),
    neighbourNutMm: n.describe('Between the closest neighbours.').optional(),
    neighbourLastLineMm: n.optional(),
    nearEdge: list(open({where: s, gapMm: n, wouldDo: wouldDo.optional()})).optional(),
    tooClose: list(open({where: s, gapMm: n, wouldDo: wouldDo.optional()})).optional(),
  }).optional(),
  nutSeat: open({grooveMm: n, leftMm: n, leastMm: n, deepestMm: n, overlapMm: n}).optional(),
  movement: movementShape.optional(),
  fretting: frettingShape.optional(),
})

export type NeckSection = z.infer<typeof sectionShape>
export type Bow = z.infer<typeof bowShape>
export type Budget = z.infer<typeof budgetShape>
export type Scarf = z.infer<typeof scarfShape>
export type Neck = z.infer<typeof neckShape>
