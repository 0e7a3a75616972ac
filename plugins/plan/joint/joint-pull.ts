import {radians} from '../../tables/units.ts'
import {type Action, nutAboveFaceMm} from '../action/action.ts'
import type {Bridge} from '../action/bridge.ts'

/** What the strings do to the neck as a whole: a force at a place, mm from the nut line and above the playing face. */
export interface JointPull {
  /** Up, away from the box. */
  upN: number
  /** Towards the tail. */
  tailwardN: number
  stationMm: number
  heightMm: number
}

/**
 * Reduce what the strings do to the neck to one force (N). With nut, bridge and anchors all on the neck the pull
 * closes inside it and nothing is left; with the bridge on the top the neck is lifted by as much as the bridge is
 * pushed down; with the anchors on the box the neck is drawn along the string next to it. Statics of a string.
 */
export function planJointPull(
  bridge: Bridge | undefined,
  isAnchoredOnNeck: boolean | undefined,
  action: Action | undefined,
  tensionTotalN: number | undefined,
): JointPull | undefined {
  if (!bridge?.on || isAnchoredOnNeck === undefined) return undefined
  const {stationMm} = bridge
  if (isAnchoredOnNeck && bridge.on === 'neck') return {upN: 0, tailwardN: 0, stationMm, heightMm: 0}
  if (!action || tensionTotalN === undefined) return undefined
  const heightMm = action.bridgeHeightMm
  if (isAnchoredOnNeck)
    return bridge.downforceN === undefined
      ? undefined
      : {upN: bridge.downforceN, tailwardN: 0, stationMm, heightMm}
  const nutMm = nutAboveFaceMm(action)
  const frontRad = Math.atan((heightMm - nutMm) / stationMm)
  if (bridge.on === 'top')
    return {
      upN: tensionTotalN * Math.sin(frontRad),
      tailwardN: tensionTotalN * Math.cos(frontRad),
      stationMm: 0,
      heightMm: nutMm,
    }
  if (bridge.breakAngleDeg === undefined) return undefined
  const backRad = radians(bridge.breakAngleDeg)
  return {
    upN: -tensionTotalN * Math.sin(backRad),
    tailwardN: tensionTotalN * Math.cos(backRad),
    stationMm,
    heightMm,
  }
}
