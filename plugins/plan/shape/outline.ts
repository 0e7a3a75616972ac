import type {z} from 'zod'
import {flag, n, open, s} from './kit.ts'

// What a drawing needs of the design besides what other concerns plan: mm from the nut line and off the centre line.

export const neckOutlineShape = open({
  nutWidthMm: n,
  tailWidthMm: n,
  tailMm: n.describe('Where the stick ends; the bridge line where that is not known.'),
  isOpen: flag.describe('Where it ends is not known.'),
  thicknessMm: n.describe('Playing face to back, all layers.'),
  joins: s,
  aboveTopMm: n.describe('Playing face above the top at the box’s edge.').optional(),
  tiltDeg: n,
  fingerboard: open({fromMm: n, toMm: n, thicknessMm: n}).optional(),
  roundOver: open({radiusMm: n, fromMm: n, toMm: n}).optional(),
})

export const headOutlineShape = open({
  lengthMm: n.describe('Nut line to head end, along its own face.'),
  widthMm: n,
  thicknessMm: n,
  joint: s,
  angleDeg: n,
  ledgeMm: n.describe('Flat behind the nut line before its face goes down.'),
  stepMm: n.describe('How far its face steps down besides.'),
  steps: s.describe('Where it does: at the nut or at the ledge.'),
})

export const outlineShape = open({
  neck: neckOutlineShape.optional(),
  head: headOutlineShape.optional(),
  nut: open({
    kind: s,
    alongMm: n.describe('What it takes along the neck; 0 where that is not known.'),
    grooveMm: n.describe('How deep it lies in the neck.'),
  }).optional(),
  bridge: open({
    lengthMm: n.describe('Across the strings.'),
    footMm: n.describe('Along the strings; 0 where that is not known.'),
  }).optional(),
  tuners: open({
    side: s.optional(),
    postHoleMm: n.optional(),
    buttonMm: n.optional(),
    stringHeightMm: n.optional(),
  }).optional(),
  anchors: open({
    kind: s.optional(),
    bodyMm: n.optional(),
    stringHoleMm: n.optional(),
    heightMm: n.describe('Where the string leaves it, above the playing face.'),
  }).optional(),
})

export type Outline = z.infer<typeof outlineShape>
export type NeckOutline = z.infer<typeof neckOutlineShape>
export type HeadOutline = z.infer<typeof headOutlineShape>
