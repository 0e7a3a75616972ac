import {type NeckTaper, neckWidthAt} from '../neck-width-at.ts'
import type {Block, Box, SoundHole} from '../shape/box.ts'
import {type Circle, gapBetween, gapToRectangle, gapToSides, type Rectangle, rectangle} from './gap.ts'

const inchMm = 25.4
const slackMm = 1e-6

/** What a sound hole's rim keeps from what is around it (mm): common practice, no source. */
const keepsMm = {
  wall: inchMm / 4,
  neck: inchMm / 8,
  block: inchMm / 8,
  hole: (inchMm * 3) / 8,
} as const

/** What stands in and on the box's top around a sound hole. */
export interface TopView {
  box: Box & {atMm: number}
  taper: NeckTaper | undefined
  bridge: Rectangle | undefined
}

/** Measure from a sound hole's rim to the box's edge, the neck, the nearest block, earlier holes and the bridge (mm). */
export function holeGaps(
  hole: Circle,
  earlier: readonly (Circle & {of: string})[],
  view: TopView,
): Partial<SoundHole> {
  const {box, bridge} = view
  const tailMm = box.neck?.tailMm
  const block = nearest(
    (box.blocks ?? []).map((one) => ({of: one.of, gapMm: gapToRectangle(hole, outlineOf(one))})),
  )
  const other = nearest(earlier.map((one) => ({of: one.of, gapMm: gapBetween(hole, one)})))
  return {
    ...(box.outside && {
      edge: {
        gapMm: gapToSides(hole, boxOutline(box.atMm, box.outside)),
        needsMm: box.outside.sidesMm + keepsMm.wall,
      },
    }),
    ...(tailMm !== undefined && {
      neck: {gapMm: gapToRectangle(hole, neckOutline(hole, view, tailMm)), needsMm: keepsMm.neck},
    }),
    ...(block && {block: {...block, needsMm: keepsMm.block}}),
    ...(other && {earlier: {...other, needsMm: keepsMm.hole}}),
    ...(bridge && {bridge: {gapMm: gapToRectangle(hole, bridge), needsMm: 0}}),
  }
}

/** Tell whether a sound hole keeps clear of everything it should. */
export function isHoleClear({edge, neck, block, earlier, bridge}: Partial<SoundHole>): boolean {
  return [edge, neck, block, earlier, bridge].every(
    (around) => around === undefined || around.gapMm >= around.needsMm - slackMm,
  )
}

const nearest = <T extends {gapMm: number}>(all: readonly T[]): T | undefined =>
  all.reduce<T | undefined>((best, one) => (best && best.gapMm <= one.gapMm ? best : one), undefined)

const outlineOf = ({stationMm, offMm, lengthMm, widthMm}: Block) =>
  rectangle(stationMm, offMm, lengthMm, widthMm)

function boxOutline(atMm: number, {lengthMm, widthMm}: {lengthMm: number; widthMm: number}): Rectangle {
  return rectangle(atMm + lengthMm / 2, 0, lengthMm, widthMm)
}

/** The neck over the box, as wide as it is beside the hole. */
function neckOutline({stationMm}: Circle, {box, taper}: TopView, tailMm: number): Rectangle {
  const halfMm = ((taper && neckWidthAt(stationMm, taper)) ?? 0) / 2
  return {fromMm: Math.min(box.atMm, tailMm), toMm: tailMm, leftMm: -halfMm, rightMm: halfMm}
}
