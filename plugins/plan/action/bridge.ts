import type {BuildValues} from '../../build-file/schema/schema.ts'
import {degrees} from '../../tables/units.ts'
import {type BoxPlace, stationOf} from '../kit/box-place.ts'
import type {Scale} from '../scale/scale.ts'
import {type Heights, nutAboveFaceMm} from './action.ts'
import type {Setbacks} from './intonation.ts'
import type {Saddles} from './saddle.ts'

/** What is known of the bridge. */
export interface Bridge extends BridgePlace, Partial<BridgePush>, Partial<Setbacks>, Partial<Saddles> {
  setAt?: BridgeSet | undefined
}

/** Where the strings leave the bridge once it is set, in mm from the nut line. */
export interface BridgeSet {
  firstMm: number
  lastMm: number
  middleMm: number
}

/** Where the bridge stands, in mm. */
export interface BridgePlace {
  /** Its line, at the scale length. */
  stationMm: number
  alongMm?: number | undefined
  on?: 'neck' | 'top' | undefined
  /** From what it stands on. */
  heightMm?: number | undefined
}

/** How the strings push the bridge, in degrees and N. */
export interface BridgePush {
  /** Down from the bridge to the nut. */
  frontAngleDeg: number
  /** Down from the bridge to the anchors. */
  breakAngleDeg: number
  /** Of all strings. */
  downforceN?: number | undefined
  /** So little behind the bridge that strings slide on it. */
  isFlat?: true | undefined
}

/** Place the bridge, and say how high it is: as the file says, or as the strings' heights call for. */
export function planBridge(
  {scale, bridge}: BuildValues,
  place: BoxPlace | undefined,
  action: Heights | undefined,
): BridgePlace | undefined {
  const stationMm = scale?.length?.mm
  if (stationMm === undefined) return undefined
  const standsMm = action?.bridgeStandsMm
  return {
    stationMm,
    alongMm: place && stationMm - place.atMm,
    on: bridge?.on?.value,
    heightMm:
      action && standsMm !== undefined ? (bridge?.height?.mm ?? action.bridgeHeightMm - standsMm) : undefined,
  }
}

/**
 * Say where the bridge is really set (mm from the nut line, at the first and the last string and halfway): on its line
 * where nothing is fretted, else as far behind it as the straight saddle that fits best is set back. Undefined of a
 * fretted build whose setbacks are not known.
 */
export function planBridgeSet(
  scale: Pick<Scale, 'fretted' | 'lengthMm'> | undefined,
  setbacks: Setbacks['setbacks'] | undefined,
  saddles: Saddles | undefined,
): BridgeSet | undefined {
  const lengthMm = scale?.lengthMm
  if (lengthMm === undefined) return undefined
  if (!scale?.fretted) return {firstMm: lengthMm, lastMm: lengthMm, middleMm: lengthMm}
  const {firstMm, lastMm} = saddles?.slantedSaddle ?? {}
  const first = firstMm ?? setbacks?.[0]?.setbackMm
  const last = lastMm ?? setbacks?.at(-1)?.setbackMm
  if (first === undefined || last === undefined) return undefined
  return {firstMm: lengthMm + first, lastMm: lengthMm + last, middleMm: lengthMm + (first + last) / 2}
}

/** Strings hold their place on a bridge from here on (degrees): common practice, no source. */
const flatDeg = 5

/**
 * Give the angles (degrees) at which the strings go down from the bridge, to the nut and to the anchors, and how hard
 * they push it down together (N): Σ T·(sin of the angle to each side). All strings run alike. Heights are above the
 * playing face. Undefined without anchors behind the bridge and their height.
 */
export function planBridgePush(
  {anchors}: BuildValues,
  place: BoxPlace | undefined,
  bridge: BridgePlace | undefined,
  strung: {action: Heights | undefined; tensionTotalN: number | undefined},
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
    isFlat: degrees(backRad) < flatDeg || undefined,
    frontAngleDeg: degrees(frontRad),
    breakAngleDeg: degrees(backRad),
    downforceN:
      tensionTotalN === undefined ? undefined : tensionTotalN * (Math.sin(frontRad) + Math.sin(backRad)),
  }
}
