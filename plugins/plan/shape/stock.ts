import type {z} from 'zod'
import {flag, list, n, open, s} from './kit.ts'

export const partShape = open({
  id: s,
  name: s,
  wood: s.describe('As written; any where the file does not say.'),
  lengthMm: n.describe('As sawn.'),
  widthMm: n,
  thicknessMm: n,
  why: s.describe('Why it has its size.'),
  of: s.describe('The path of the build file it comes from.'),
  isSmall: flag.describe('So short that it is cut off its strip last.'),
})

export const sawnPieceShape = open({
  id: s.describe('One of several alike is A4.1.'),
  stockId: s.describe('As the build or the rack lists it.'),
  wood: s,
  lengthMm: n,
  widthMm: n,
  thicknessMm: n,
  fromMm: n.describe('Where the squared, clear length starts, from the end that clear counts from.'),
  toMm: n,
  strips: list(
    open({
      widthMm: n,
      acrossMm: n.describe('From the first edge.'),
      cuts: list(
        open({
          partId: s,
          atMm: n.describe('From the end that clear counts from.'),
          lengthMm: n,
          widthMm: n.describe('Of the part; less than the strip’s where the rest is ripped off.'),
        }),
      ),
    }),
  ).describe('Ripped end to end, in the order sawn; each is then crosscut.'),
  offcuts: list(
    open({
      lengthMm: n,
      widthMm: n,
      thicknessMm: n,
      atMm: n,
      acrossMm: n,
    }),
  ).describe('Those that go back on the rack, the longest first.'),
})

export const cutsShape = open({
  parts: list(partShape),
  pieces: list(sawnPieceShape),
  used: n.describe('How many pieces are cut.'),
  bought: list(
    open({
      size: s.describe('Nominal, as shops name it.'),
      wood: s,
      lengthMm: n,
      widthMm: n,
      thicknessMm: n.describe('Dressed.'),
      count: n,
      boardFeet: n.describe('Of all of them; hardwood only.').optional(),
    }),
  ).describe('Boards to buy for what is unplaced.'),
  wasteFraction: n.describe('Neither part nor kept offcut, of the volume of the pieces cut.'),
  bound: n.describe('The proven least that used can be.'),
  proven: flag.describe(
    'No plan is better on the first two aims: the most volume placed, out of the least volume cut.',
  ),
  gapFraction: n.describe('How far at most the volume cut lies above the least, where it is not proven.'),
  fenceSettings: n.describe('How many widths the fence is set to.'),
  unplaced: list(
    open({
      partId: s,
      nearest: s.optional(),
      lacks: s,
      wouldDo: open({path: s, mm: n}).describe('A size that some piece gives.').optional(),
    }),
  ),
  hasStock: flag.describe('The build lists pieces, or takes them from the rack.'),
  kerfMm: n,
  trimMm: n,
})

export const stockTroubleShape = open({
  kind: s.describe('twice, unknown, cut, later, undated, unsized or clear.'),
  at: s.describe('The path of the value to change.'),
  id: s,
  other: s.describe('The path of the other one, where a piece is named twice.').optional(),
  by: s.describe('The build that cut it, or that it comes from.').optional(),
  on: s.describe('The day it came into the shop.').optional(),
  nearest: s.describe('A piece that is there and may be meant.').optional(),
  lacks: s.describe('The size that is missing.').optional(),
  mm: n.describe('What would do.').optional(),
})

export type StockTrouble = z.infer<typeof stockTroubleShape>
export type Part = z.infer<typeof partShape>
export type SawnPieceShape = z.infer<typeof sawnPieceShape>
export type Cuts = z.infer<typeof cutsShape>
