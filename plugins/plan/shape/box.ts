import type {z} from 'zod'
import {flag, list, n, open, s} from './kit.ts'

export const neckInBoxShape = open({
  joins: s.describe('on top, through or end.'),
  thicknessMm: n,
  tailMm: n.describe('Its tail end, from the nut.').optional(),
  widthMm: n.describe('Where it comes over the box’s head-side edge.'),
  aboveTopMm: n.describe('Its playing face above the box’s top.'),
  faceLevelMm: n.describe(
    'The same with its wood level with the top: the fingerboard’s thickness, or nothing.',
  ),
  backBelowTopMm: n.describe('Its back below the box’s top; negative: above it.'),
  faceByThicknessMm: n
    .describe(
      'How far above the top its thickness would put the playing face, where the file says that twice.',
    )
    .optional(),
  gapMm: n.describe('Daylight between a neck that runs through and the top.').optional(),
  leastGapMm: n.describe('Where the bridge stands on that top.').optional(),
  heightInsideMm: n.describe('What a neck that runs through takes of the height inside.').optional(),
  tallestMm: n.describe('The thickest neck that still runs through above the back.').optional(),
  notch: open({
    widthMm: n,
    depthMm: n.describe('Down from the box’s upper edge.'),
    leftMm: n.describe('What is left of the wall under it, above the back.').optional(),
    deepestMm: n.describe('The deepest that leaves enough of the wall.').optional(),
    isGiven: flag,
    besideMm: n.describe('What is left of the wall at each side of it.').optional(),
  }).optional(),
  shim: open({lengthMm: n, thickMm: n.describe('At its thick end.'), angleDeg: n}).optional(),
  stringAboveTopMm: n.describe('The string above the box’s top at its head-side edge.').optional(),
})

// Gaps are from a hole’s rim; negative: it reaches in.
export const soundHoleShape = open({
  of: s.describe('Its path in the build file.'),
  stationMm: n,
  alongMm: n,
  offMm: n,
  diameterMm: n,
  edge: open({gapMm: n, needsMm: n}).describe('To the nearest outer edge of the box.').optional(),
  neck: open({gapMm: n, needsMm: n}).optional(),
  block: open({of: s, gapMm: n, needsMm: n}).describe('The nearest one.').optional(),
  earlier: open({of: s, gapMm: n, needsMm: n}).describe('The nearest hole before it in the file.').optional(),
  bridge: open({gapMm: n, needsMm: n}).describe('To the foot of a bridge on the top.').optional(),
  wouldDo: open({path: s, mm: n})
    .describe('Where it keeps clear of everything; the nearest place, or else a smaller one.')
    .optional(),
})

export const blockShape = open({
  of: s,
  stationMm: n.describe('Its middle.'),
  alongMm: n.describe('Its middle.'),
  offMm: n.describe('Its middle.'),
  lengthMm: n.describe('Along the neck.'),
  widthMm: n.describe('Across the neck.'),
  thicknessMm: n.optional(),
  glued: s.describe('under the top, on the sides or at the ends.').optional(),
  overWallMm: n.describe('How far it reaches into a wall; 0 or less: it fits inside.').optional(),
  overNeckMm: n.describe('How far it reaches into a neck that runs through.').optional(),
  wouldDo: open({path: s, mm: n}).optional(),
})

export const bridgeSeatShape = open({
  footMm: n,
  lengthMm: n,
  fromTailWallMm: n.describe('From its foot to the inside of the tail wall.'),
  fromHeadEdgeMm: n.describe('From the box’s head-side edge to its foot.'),
  fromTailEdgeMm: n.describe('From its foot to the box’s tail edge.'),
  leastFromTailWallMm: n,
  belongs: open({from: n, to: n}).describe('The part of the box where bridges on the top sound best.'),
})

export const boxShape = open({
  atMm: n.describe('Its head-side edge, from the nut.').optional(),
  tailMm: n.describe('Its tail edge, from the nut.').optional(),
  bridgeFraction: n.describe('The bridge line along the box, 0 at the head side.').optional(),
  atByTailMm: n
    .describe('Where bridge.from-tail would put the head-side edge, where box.at places it too.')
    .optional(),
  placedBy: s.describe('The path of the build file that says where it lies.').optional(),
  wouldDo: open({path: s, mm: n})
    .describe('Where it would lie for the bridge to stand well, where it does not.')
    .optional(),
  outside: open({lengthMm: n, widthMm: n, depthMm: n, sidesMm: n, topMm: n, backMm: n}).optional(),
  inside: open({lengthMm: n, widthMm: n, heightMm: n}).optional(),
  neck: neckInBoxShape.optional(),
  soundHoles: list(soundHoleShape).optional(),
  blocks: list(blockShape).optional(),
  bridgeSeat: bridgeSeatShape.describe('Where the bridge stands on the top.').optional(),
  topHeld: s.describe('glued, screwed or hinged.').optional(),
  isShut: flag.describe('The top is glued, and no hole lets a hand in.').optional(),
  volumeL: n.describe('The air inside: less the neck and the blocks.').optional(),
  holeAreaMm2: n.optional(),
  resonanceHz: n.describe('Both ends of each hole flanged, in a box that does not give.').optional(),
  resonanceLowHz: n.describe('As thin walls lower it.').optional(),
  nearestNote: s.optional(),
  nearestCents: n.describe('The resonance above that note.').optional(),
  nearestLines: list(open({string: s, label: s, cents: n}))
    .describe('Where that note falls on the neck; label 0 is the open string.')
    .optional(),
})

export type Box = z.infer<typeof boxShape>
export type NeckInBox = z.infer<typeof neckInBoxShape>
export type SoundHole = z.infer<typeof soundHoleShape>
export type Block = z.infer<typeof blockShape>
