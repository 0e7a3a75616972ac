import type {BuildValues} from '../../build-file/schema.ts'
import type {Plan} from '../shape/plan.ts'
import {stationOf} from '../station-of.ts'

/** Wood left behind an anchor's body, to the neck's end (mm): common practice, no source. */
const behindAnchorMm = 25.4 / 4

/** What lies past the bridge line and needs the neck under it, in mm from that line. */
export interface TailNeed {
  anchorsMm?: number
  boxMm?: number
}

/**
 * Say how far past the bridge line the neck must reach (mm): for anchors in the neck to their far side and 1/4 in of
 * wood behind it (a tailpiece hooks over the end); along the box to its tail edge, or run through to its tail wall.
 * Anchors on the box behind a neck that runs through need nothing. Empty where neither is known yet.
 */
export function tailNeed(values: BuildValues, {box, scale}: Pick<Plan, 'box' | 'scale'>): TailNeed {
  const {anchors, bridge} = values
  const scaleMm = scale?.lengthMm
  if (scaleMm === undefined) return {}
  const isThrough = values.neck?.joins?.value === 'through'
  const boxTailMm = box?.tailMm
  const stationMm = stationOf(anchors ?? {}, box)
  const isOnBox = isThrough && stationMm !== undefined && stationMm <= (boxTailMm ?? 0)
  const bodyMm = anchors?.body?.mm ?? anchors?.['string-hole']?.mm ?? 0
  const behindMm = anchors?.kind?.value === 'tailpiece' ? 0 : bodyMm / 2 + behindAnchorMm
  const footMm = (bridge?.foot?.mm ?? 0) / 2
  const wallMm = isThrough ? (values.box?.sides?.mm ?? 0) : 0
  return {
    ...(stationMm !== undefined && !isOnBox && {anchorsMm: Math.max(stationMm + behindMm - scaleMm, footMm)}),
    ...(boxTailMm !== undefined && {boxMm: Math.max(boxTailMm - wallMm - scaleMm, 0)}),
  }
}
