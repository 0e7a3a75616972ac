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
 * wood behind it, and along the box to its tail edge. Empty where neither is known yet.
 */
export function tailNeed(
  {anchors, bridge}: BuildValues,
  {box, scale}: Pick<Plan, 'box' | 'scale'>,
): TailNeed {
  const scaleMm = scale?.lengthMm
  if (scaleMm === undefined) return {}
  const stationMm = stationOf(anchors ?? {}, box)
  const bodyMm = anchors?.body?.mm ?? anchors?.['string-hole']?.mm ?? 0
  const footMm = (bridge?.foot?.mm ?? 0) / 2
  return {
    ...(stationMm !== undefined && {
      anchorsMm: Math.max(stationMm + bodyMm / 2 + behindAnchorMm - scaleMm, footMm),
    }),
    ...(box?.tailMm !== undefined && {boxMm: Math.max(box.tailMm - scaleMm, 0)}),
  }
}
