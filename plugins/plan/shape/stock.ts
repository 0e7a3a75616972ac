import type {z} from 'zod'
import {flag, list, n, open, s} from './kit.ts'

export const partShape = open({
  id: s,
  name: s,
  wood: s,
  lengthMm: n,
  widthMm: n,
  thicknessMm: n,
  why: s,
})

export const cutsShape = open({
  parts: list(partShape),
  pieces: list(
    open({
      id: s,
      stockId: s,
      strips: list(
        open({
          widthMm: n,
          cuts: list(open({partId: s, atMm: n, lengthMm: n})),
        }),
      ),
      offcuts: list(open({lengthMm: n, widthMm: n, thicknessMm: n})),
    }),
  ),
  used: n,
  bought: list(
    open({
      size: s,
      wood: s,
      lengthMm: n,
      widthMm: n,
      thicknessMm: n,
      count: n,
      boardFeet: n.optional(),
    }),
  ),
  wasteFraction: n,
  bound: n,
  proven: flag,
  unplaced: list(open({partId: s, nearest: s.optional(), lacks: s})),
})

export type Part = z.infer<typeof partShape>
export type Cuts = z.infer<typeof cutsShape>
