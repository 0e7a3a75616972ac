import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import {stationOf} from '../kit/box-place.ts'
import type {Wall} from '../kit/hole.ts'
import {type Side, signOf} from '../kit/sides.ts'
import type {Box} from './box.ts'

/** The jack in its wall, in mm. */
export interface Jack {
  holeMm?: number | undefined
  /** The wall it stands in. */
  face: Wall
  stationMm?: number | undefined
  offMm: number
  /** Below the top: the middle of the wall, by common practice, no source. */
  downMm?: number | undefined
  /** The file does not place it: a place with room. */
  proposed?: true | undefined
  wallMm?: number | undefined
  threadMm?: number | undefined
  /** The wall and 1/8 in for the nut. */
  leastThreadMm?: number | undefined
  /** The thickest wall that its thread goes through, with 1/8 in for the nut. */
  thickestWallMm?: number | undefined
  /** Behind the wall’s outer face. */
  bodyMm?: number | undefined
  /** Behind the wall’s outer face. */
  roomMm?: number | undefined
}

/** What the jack's nut and washer take of its thread (mm): common practice, no source. */
const nutMm = inch(1 / 8)

type JackValues = NonNullable<NonNullable<BuildValues['pickup']>['jack']>

/**
 * Place the jack in its wall, with the thread that the wall asks for and the room behind it. A jack that the file does
 * not place is given a place with room, and is marked as proposed.
 */
export function planJack(
  jack: JackValues,
  box: Box,
  {hasStrapButtons, strings}: {hasStrapButtons: boolean; strings: number | undefined},
): Jack | undefined {
  const {outside, neck} = box
  const wall = jack.in?.value
  if (!wall) return undefined
  const isEnd = wall === 'end'
  const side: Side = wall === 'side bass' ? 'bass' : 'treble'
  const face: Wall = isEnd ? 'tail end' : `side ${side}`
  const neckHalfMm = neck?.joins === 'through' ? neck.widthMm / 2 : 0
  const isProposed = !(isEnd ? jack.off : (jack.at ?? jack.along))
  const places =
    face === 'tail end'
      ? placesInEnd(jack, box, neckHalfMm, hasStrapButtons)
      : placesInSide(jack, box, signOf(side, strings))
  const {stationMm, offMm} =
    places.find((one) => isProposed && blockBehind(face, one, box) === 0) ?? places[0]!
  const wallMm = (outside?.sidesMm ?? 0) + (isProposed ? 0 : blockBehind(face, {stationMm, offMm}, box))
  return {
    face,
    holeMm: jack.hole?.mm,
    stationMm: Number.isFinite(stationMm) ? stationMm : undefined,
    offMm,
    downMm: outside && outside.depthMm / 2,
    proposed: isProposed || undefined,
    threadMm: jack.thread?.mm,
    bodyMm: jack.body?.mm,
    wallMm: outside && wallMm,
    leastThreadMm: outside && wallMm + nutMm,
    thickestWallMm: jack.thread && Math.max(0, jack.thread.mm - nutMm),
    roomMm: outside && roomBehind(isEnd, offMm, neckHalfMm, outside),
  }
}

/** Where the file puts the jack in the tail end, or places to choose from: the middle first, then beside it. */
function placesInEnd(
  jack: JackValues,
  {inside, tailMm = Number.NaN}: Box,
  neckHalfMm: number,
  hasStrapButtons: boolean,
): Spot[] {
  const besideMm = (neckHalfMm + (inside?.widthMm ?? 0) / 2) / 2
  const offs = neckHalfMm || hasStrapButtons ? [besideMm, -besideMm] : [0, besideMm, -besideMm]
  return (jack.off ? [jack.off.mm] : offs).map((offMm) => ({stationMm: tailMm, offMm}))
}

/** Where the file puts the jack in a side, or places along it to choose from: the middle first. */
function placesInSide(jack: JackValues, box: Box, sign: -1 | 1): Spot[] {
  const {outside, atMm = Number.NaN} = box
  const offMm = (sign * (outside?.widthMm ?? 0)) / 2
  const given = stationOf(jack, box)
  const parts = [1 / 2, 5 / 8, 3 / 8, 3 / 4, 1 / 4]
  const stations = given === undefined ? parts.map((part) => atMm + part * (outside?.lengthMm ?? 0)) : [given]
  return stations.map((stationMm) => ({stationMm, offMm}))
}

interface Spot {
  stationMm: number
  offMm: number
}

/** How far a jack may reach behind the wall's outer face: to the wall across, or to a neck that runs through. */
function roomBehind(
  isEnd: boolean,
  offMm: number,
  neckHalfMm: number,
  {lengthMm, widthMm, sidesMm}: {lengthMm: number; widthMm: number; sidesMm: number},
): number {
  if (!isEnd) return neckHalfMm ? widthMm / 2 - neckHalfMm : widthMm - sidesMm
  return Math.abs(offMm) < neckHalfMm ? sidesMm : lengthMm - sidesMm
}

/**
 * Say how thick a block is (mm) that stands against a wall of the box where the jack goes through it; nothing where
 * none does.
 */
function blockBehind(
  face: Wall,
  {stationMm, offMm}: Spot,
  {blocks = [], inside, tailMm, outside}: Box,
): number {
  if (!inside || !outside || tailMm === undefined) return 0
  const touchMm = 1
  const behind = blocks.find((block) =>
    face === 'tail end'
      ? tailMm - outside.sidesMm - (block.stationMm + block.lengthMm / 2) < touchMm &&
        Math.abs(offMm - block.offMm) < block.widthMm / 2
      : inside.widthMm / 2 - Math.sign(offMm) * block.offMm - block.widthMm / 2 < touchMm &&
        Math.abs(stationMm - block.stationMm) < block.lengthMm / 2,
  )
  return behind ? (face === 'tail end' ? behind.lengthMm : behind.widthMm) : 0
}
