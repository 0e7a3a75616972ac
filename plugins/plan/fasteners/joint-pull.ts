import type {BuildValues} from '../../build-file/schema.ts'
import {nutAboveFaceMm} from '../nut-above-face.ts'
import type {Plan} from '../shape/plan.ts'
import {stationOf} from '../station-of.ts'

/** What the strings do to the neck as a whole: a force at a place, mm from the nut line and above the playing face. */
export interface JointPull {
  /** Up, away from the box. */
  upN: number
  /** Towards the tail. */
  tailwardN: number
  stationMm: number
  heightMm: number
}

/** Tell whether the strings are anchored on the neck, past whatever of the box lies over it. */
export function isAnchoredOnNeck(values: BuildValues, {box}: Plan): boolean | undefined {
  const anchorMm = stationOf(values.anchors ?? {}, box)
  const neck = box?.neck
  if (anchorMm === undefined || !neck) return undefined
  if (neck.joins === 'end') return false
  if (neck.tailMm === undefined) return undefined
  const isBeyondBox = neck.joins === 'on top' || anchorMm > (box.tailMm ?? Number.POSITIVE_INFINITY)
  return isBeyondBox && anchorMm <= neck.tailMm
}

/**
 * Reduce what the strings do to the neck to one force (N). With nut, bridge and anchors all on the neck the pull
 * closes inside it and nothing is left; with the bridge on the top the neck is lifted by as much as the bridge is
 * pushed down; with the anchors on the box the neck is drawn along the string next to it. Statics of a string.
 */
export function jointPull(values: BuildValues, plan: Plan): JointPull | undefined {
  const {bridge, action, tensionTotalN} = plan
  const isOnNeck = isAnchoredOnNeck(values, plan)
  if (!bridge?.on || isOnNeck === undefined) return undefined
  if (isOnNeck && bridge.on === 'neck')
    return {upN: 0, tailwardN: 0, stationMm: bridge.stationMm, heightMm: 0}
  if (!action || tensionTotalN === undefined) return undefined
  const heightMm = action.bridgeHeightMm
  const {stationMm} = bridge
  if (isOnNeck)
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
  const backRad = (bridge.breakAngleDeg * Math.PI) / 180
  return {
    upN: -tensionTotalN * Math.sin(backRad),
    tailwardN: tensionTotalN * Math.cos(backRad),
    stationMm,
    heightMm,
  }
}
