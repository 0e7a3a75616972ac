import {nutAboveFaceMm} from '../action.ts'
import type {PlanPart} from '../part.ts'
import {stationOf} from '../station-of.ts'

const degrees = (rad: number) => (rad * 180) / Math.PI

/**
 * Give the angles (degrees) at which the strings go down from the bridge, to the nut and to the anchors, and how hard
 * they push it down together (N): Σ T·(sin of the angle to each side). All strings run alike. Heights are above the
 * playing face. Absent without anchors behind the bridge and their height.
 */
export const bridgePush: PlanPart = ({values}, soFar) => {
  const {bridge, action, tensionTotalN} = soFar
  const anchorMm = stationOf(values.anchors ?? {}, soFar.box)
  const anchorHeight = values.anchors?.height?.mm
  if (!bridge || !action || anchorMm === undefined || anchorHeight === undefined) return {}
  const behindMm = anchorMm - bridge.stationMm
  if (behindMm <= 0) return {}
  const frontRad = Math.atan((action.bridgeHeightMm - nutAboveFaceMm(action)) / bridge.stationMm)
  const backRad = Math.atan((action.bridgeHeightMm - anchorHeight) / behindMm)
  return {
    bridge: {
      ...bridge,
      frontAngleDeg: degrees(frontRad),
      breakAngleDeg: degrees(backRad),
      ...(tensionTotalN !== undefined && {
        downforceN: tensionTotalN * (Math.sin(frontRad) + Math.sin(backRad)),
      }),
    },
  }
}
