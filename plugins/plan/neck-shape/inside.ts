import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import type {BoxPlace} from '../kit/box-place.ts'
import type {NeckLayer} from './layers.ts'

/** Daylight under a top that carries the bridge, at least (mm): common practice, no source. */
export const leastGapMm = inch(1 / 32)

/** Where a neck that runs through is cut down: mm from the nut line, and down from the playing face. */
export interface InsideBox {
  /** The box’s ends. */
  box: readonly [headMm: number, tailMm: number]
  /** Inside of its two end walls. */
  clear: readonly [fromMm: number, toMm: number]
  /** Where the walls hold it: in the middle of each, or at the neck’s end before it. */
  wallsMm: readonly [headMm: number, tailMm: number]
  /** How deep the top’s underside lies. */
  underTopMm: number
  /** How deep the neck’s upper surface lies between the walls. */
  surfaceMm: number
  /** Playing face to back. */
  totalMm: number
}

/**
 * Say where a neck that runs through is cut down for the top and for daylight under it: as deep as `neck.inside` or
 * `box.neck-gap` says, or where neither does, as little as the top needs. Undefined without a box in its place.
 */
export function insideBox(
  {neck, box, bridge}: BuildValues,
  place: BoxPlace | undefined,
  neckMm: {totalMm: number; tailMm: number | undefined},
): InsideBox | undefined {
  const aboveTopMm = neck?.['above-top']?.mm
  const sidesMm = box?.sides?.mm
  const topMm = box?.top?.thickness?.mm
  if (neck?.joins?.value !== 'through' || !place || place.tailMm === undefined) return undefined
  if (aboveTopMm === undefined || sidesMm === undefined || topMm === undefined) return undefined
  const {totalMm, tailMm: endMm = Number.POSITIVE_INFINITY} = neckMm
  const {atMm, tailMm} = place
  const underTopMm = Math.max(aboveTopMm + topMm, 0)
  const usualMm = bridge?.on?.value === 'top' ? leastGapMm : 0
  const byGapMm = aboveTopMm + topMm + (box?.['neck-gap']?.mm ?? usualMm)
  const clear = [atMm + sidesMm, tailMm - sidesMm] as const
  const walls = [atMm + sidesMm / 2, Math.min(tailMm - sidesMm / 2, endMm)] as const
  if (!(clear[1] > clear[0]) || !(walls[1] > walls[0])) return undefined
  return {
    box: [atMm, tailMm],
    clear,
    wallsMm: walls,
    underTopMm,
    surfaceMm: Math.max(neck.inside ? totalMm - neck.inside.mm : byGapMm, underTopMm),
    totalMm,
  }
}

/**
 * Part the layers of a neck where it is cut down from the face: to the underside of the top in the walls, and by the
 * daylight more between them.
 */
export function layersAlong(layers: readonly NeckLayer[], inside: InsideBox | undefined): NeckLayer[] {
  if (!inside) return [...layers]
  const {box, clear, underTopMm, surfaceMm} = inside
  const stretches = [
    [Number.NEGATIVE_INFINITY, box[0], 0],
    [box[0], clear[0], underTopMm],
    [clear[0], clear[1], surfaceMm],
    [clear[1], box[1], underTopMm],
    [box[1], Number.POSITIVE_INFINITY, 0],
  ] as const
  return layers.flatMap((layer) =>
    stretches.flatMap(([startMm, endMm, deepMm]) => {
      const [fromMm, toMm] = [Math.max(layer.fromMm, startMm), Math.min(layer.toMm, endMm)]
      const thicknessMm = Math.min(layer.thicknessMm, layer.fromFaceMm + layer.thicknessMm - deepMm)
      if (!(toMm > fromMm && thicknessMm > 0)) return []
      return [{...layer, fromMm, toMm, fromFaceMm: Math.max(layer.fromFaceMm, deepMm), thicknessMm}]
    }),
  )
}
