import type {z} from 'zod'
import {flag, list, n, open, s} from './kit.ts'

export const stringShape = open({
  name: s.describe('Its note; a second one D4-2.'),
  note: s,
  frequencyHz: n,
  gaugeMm: n.optional(),
  gauge: s.describe('As written.').optional(),
  wound: flag.optional(),
  material: s.describe('What it is made of; of a wound string, its core.').optional(),
  wrap: s.optional(),
  ends: s.optional(),
  course: n.describe('How many strings run together.'),
  massPerLengthKgM: n.optional(),
  massFrom: s.describe('mass, tension, plain or wound: where the mass per length comes from.').optional(),
  coreMm: n.optional(),
  coreAssumed: flag.optional(),
  coreDoubt: open({tensionN: list(n), stressMpa: list(n)})
    .describe('Least and most with an assumed core a twentieth of the gauge thinner and thicker.')
    .optional(),
  stiffnessMpa: n.describe('Young’s modulus.').optional(),
  stiffnessFrom: s.describe('file, or the material whose usual stiffness is taken.').optional(),
  sectionMm: n.describe('Diameter of what resists bending: the string, or its core.').optional(),
  tensionN: n.describe('T = μ(2Lf)², of one string.').optional(),
  stressMpa: n.describe('In the core, where wound.').optional(),
  strengthMpa: n.describe('Least strength of music wire of that diameter.').optional(),
  breakFraction: n.optional(),
  breakKnown: flag.optional(),
  stretchMm: n.optional(),
  inharmonicity: n.describe('B in f_n = n·f_0·√(1 + B·n²).').optional(),
  pull: s.describe('slack, easy, firm or stiff.').optional(),
  pullLimits: open({slackN: n, easyN: n, firmN: n})
    .describe('Slack below the first, easy and firm up to the others, stiff above.')
    .optional(),
  offMedian: n.describe('Pull over the median of its material, less 1.').optional(),
  uneven: flag.describe('Too far off the median of its material.').optional(),
  lengthNeededMm: n.describe('From its anchor over bridge and nut to the post, winds included.').optional(),
  packetMm: n.describe('How long the string of a packet is.').optional(),
  anchorWithinMm: n.describe('The furthest place of its anchor that a packet’s string reaches.').optional(),
  alternatives: list(open({gauge: s, tensionN: n}))
    .describe('Common gauges that would do, the one nearest to the pull to aim for first.')
    .optional(),
  mend: open({
    tensionN: n.describe('The pull to aim for.'),
    massKgM: n.describe('What a string of that pull weighs, kg/m.'),
    packetN: n.describe('What a packet would print for it.').optional(),
    note: s.describe('The highest note clear of breaking.').optional(),
  }).optional(),
})

export const tuningShape = open({
  name: s,
  notes: list(s),
  tensionsN: list(n),
  pulls: list(s),
})

export const setbackShape = open({
  name: s,
  setbackMm: n.describe('The saddle’s setback alone; positive: longer string.'),
  stationMm: n.describe('The saddle’s place then, from the nut line.'),
  rmsCents: n,
  worstCents: n.describe('Over the same lines, of either sign.'),
  plainWorstCents: n.describe('The same with nothing set back.'),
  plainRmsCents: n.describe('With nothing set back.'),
  together: open({
    saddleMm: n,
    nutMm: n.describe('Negative moves the nut towards the lines.'),
    rmsCents: n,
  }),
})

export const straightSaddleShape = open({
  firstMm: n.describe('Setback at the first string.'),
  lastMm: n.describe('Setback at the last string.'),
  angleDeg: n.describe('Off square to the neck; positive: further back at the first string.'),
  rmsCents: n.describe('Over all strings.'),
  worstCents: n,
  strings: list(open({name: s, setbackMm: n, rmsCents: n, worstCents: n})),
})

export const bridgeShape = open({
  stationMm: n,
  alongMm: n.optional(),
  on: s.describe('neck or top.').optional(),
  heightMm: n.describe('From what it stands on.').optional(),
  frontAngleDeg: n.describe('Down from the bridge to the nut.').optional(),
  breakAngleDeg: n.describe('Down from the bridge to the anchors.').optional(),
  downforceN: n.optional(),
  setbacks: list(setbackShape).optional(),
  drawnWorstCents: n
    .describe('Over all strings and their first twelve lines, with nothing set back.')
    .optional(),
  slantedSaddle: straightSaddleShape.describe('The straight slanted saddle that fits best.').optional(),
  squareSaddle: straightSaddleShape.describe('The same, square to the neck.').optional(),
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
  crownMm: n.describe('The frets’ crowns above the playing face; 0 where not given or fretless.'),
  reliefMm: n,
  bridgeStandsMm: n
    .describe('What the bridge stands on, above the playing face; negative: below.')
    .optional(),
  leastMm: n.describe('The least height of the strings over nut, lines and octave.'),
  levelHeightMm: n
    .describe('The bridge height that lets the strings run level with the playing face.')
    .optional(),
  calledHeightMm: n
    .describe('Where the file gives all three heights: the bridge height that nut and octave call for.')
    .optional(),
  atLinesMm: list(list(n)).describe('By string, then line.').optional(),
})

export type Tuning = z.infer<typeof tuningShape>
export type StringPlan = z.infer<typeof stringShape>
export type Setback = z.infer<typeof setbackShape>
export type StraightSaddle = z.infer<typeof straightSaddleShape>
export type Bridge = z.infer<typeof bridgeShape>
export type Intonation = z.infer<typeof intonationShape>
export type Action = z.infer<typeof actionShape>
