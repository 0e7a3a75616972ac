import type {BuildValues} from '../../build-file/schema.ts'
import {degrees} from '../../tables/units.ts'
import type {Action} from '../action.ts'
import {nutAboveFaceMm} from '../action.ts'
import type {Bridge} from '../bridge.ts'
import {stationOf} from '../station-of.ts'
import type {BoxPlace} from './box-place.ts'

export interface BridgePush {
  /** Down from the bridge to the nut. */
  frontAngleDeg: number
  /** Down from the bridge to the anchors. */
  breakAngleDeg: number
  /** Of all strings. */
  downforceN?: number | undefined
}

/**
 * Give the angles (degrees) at which the strings go down from the bridge, to the nut and to the anchors, and how hard
 * they push it down together (N): Σ T·(sin of the angle to each side). All strings run alike. Heights are above the
 * playing face. Undefined without anchors behind the bridge and their height.
 */
export function planBridgePush(
  {anchors}: BuildValues,
  place: BoxPlace | undefined,
  bridge: Bridge | undefined,
  strung: {action: Action | undefined; tensionTotalN: number | undefined},
): BridgePush | undefined {
  const {action, tensionTotalN} = strung
  const anchorMm = stationOf(anchors ?? {}, place)
  const anchorHeightMm = anchors?.height?.mm
  if (!bridge || !action || anchorMm === undefined || anchorHeightMm === undefined) return undefined
  const behindMm = anchorMm - bridge.stationMm
  if (behindMm <= 0) return undefined
  const frontRad = Math.atan((action.bridgeHeightMm - nutAboveFaceMm(action)) / bridge.stationMm)
  const backRad = Math.atan((action.bridgeHeightMm - anchorHeightMm) / behindMm)
  return {
    frontAngleDeg: degrees(frontRad),
    breakAngleDeg: degrees(backRad),
    downforceN:
      tensionTotalN === undefined ? undefined : tensionTotalN * (Math.sin(frontRad) + Math.sin(backRad)),
  }
}
