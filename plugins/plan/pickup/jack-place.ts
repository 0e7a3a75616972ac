import type {BuildValues} from '../../build-file/schema.ts'
import type {Box} from '../shape/box.ts'
import type {Jack} from '../shape/pickup.ts'
import {stationOf} from '../station-of.ts'

/** What the jack's nut and washer take of its thread (mm): common practice, no source. */
const nutMm = 25.4 / 8

type JackValues = NonNullable<NonNullable<BuildValues['pickup']>['jack']>

/**
 * Place the jack in its wall (mm from the nut line, off the centre line), with the thread that the wall asks for and
 * the room behind it. A jack that the file does not place is given a place with room, and is marked as proposed.
 */
export function jackPlace(jack: JackValues, box: Box, hasStrapButtons: boolean): Jack | undefined {
  const {outside, inside, atMm, tailMm, neck} = box
  const wall = jack.in?.value
  if (!wall) return undefined
  const isEnd = wall === 'end'
  const face = isEnd ? 'tail end' : wall === 'side bass' ? 'side bass' : 'side treble'
  const halfMm = (outside?.widthMm ?? 0) / 2
  const neckHalfMm = neck?.joins === 'through' ? neck.widthMm / 2 : 0
  const besideMm = neckHalfMm || hasStrapButtons ? (neckHalfMm + (inside?.widthMm ?? 0) / 2) / 2 : 0
  const placed = isEnd ? jack.off : (jack.at ?? jack.along)
  const sideMm = atMm === undefined ? undefined : atMm + (outside?.lengthMm ?? 0) / 2
  const stationMm = isEnd ? tailMm : (stationOf(jack, box) ?? sideMm)
  const offMm = isEnd ? (jack.off?.mm ?? besideMm) : face === 'side bass' ? -halfMm : halfMm
  return {
    face,
    ...(jack.hole && {holeMm: jack.hole.mm}),
    ...(stationMm !== undefined && {stationMm}),
    offMm,
    isProposed: !placed,
    ...(jack.thread && {threadMm: jack.thread.mm}),
    ...(jack.body && {bodyMm: jack.body.mm}),
    ...(outside && {
      wallMm: outside.sidesMm,
      leastThreadMm: outside.sidesMm + nutMm,
      roomMm: roomBehind(isEnd, offMm, neckHalfMm, outside),
    }),
  }
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
