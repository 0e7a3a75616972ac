import {type Circle, gapToRectangle, gapToSides, rectangle} from '../box/gap.ts'
import type {Box} from '../shape/box.ts'

/** No disc is smaller (mm): common practice, no source. */
const smallestMm = 25.4 / 4

/**
 * Find how wide a disc (mm) fits under the top at a place, and what it would run into first: a wall, a block, or a
 * neck that runs through with less daylight than the disc is thick. Without a place, what the inside takes at all.
 */
export function pickupRoom(
  spot: {stationMm: number; offMm: number} | undefined,
  thicknessMm: number | undefined,
  box: Box,
): {largestMm: number; against: string} | undefined {
  const {inside, outside, atMm, neck} = box
  if (!inside || !outside) return undefined
  const across = {largestMm: Math.min(inside.lengthMm, inside.widthMm), against: 'the walls'}
  if (!spot || atMm === undefined) return across
  const point: Circle = {...spot, diameterMm: 0}
  const walls = rectangle(atMm + outside.lengthMm / 2, 0, inside.lengthMm, inside.widthMm)
  const gaps = [
    {against: 'the walls', mm: gapToSides(point, walls)},
    ...(box.blocks ?? []).map(({stationMm, offMm, lengthMm, widthMm}) => ({
      against: 'a block',
      mm: gapToRectangle(point, rectangle(stationMm, offMm, lengthMm, widthMm)),
    })),
  ]
  if (neck?.joins === 'through' && thicknessMm !== undefined && thicknessMm > (neck.gapMm ?? thicknessMm)) {
    const neckMm = (neck.tailMm ?? box.tailMm ?? atMm) - atMm
    gaps.push({
      against: 'the neck',
      mm: gapToRectangle(point, rectangle(atMm + neckMm / 2, 0, neckMm, neck.widthMm)),
    })
  }
  const least = gaps.reduce((best, gap) => (gap.mm < best.mm ? gap : best))
  return {largestMm: 2 * least.mm < smallestMm ? 0 : 2 * least.mm, against: least.against}
}
