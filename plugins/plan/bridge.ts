import type {BuildValues} from '../build-file/schema.ts'
import type {Action} from './action.ts'
import type {BoxPlace} from './box/box-place.ts'
import type {BridgePush} from './box/bridge-push.ts'
import type {Setbacks} from './intonation.ts'
import type {Saddles} from './saddle.ts'

/** What is known of the bridge. */
export interface Bridge extends BridgePlace, Partial<BridgePush>, Partial<Setbacks>, Partial<Saddles> {}

/** Where the bridge stands, in mm. */
export interface BridgePlace {
  /** Its line, at the scale length. */
  stationMm: number
  alongMm?: number | undefined
  on?: 'neck' | 'top' | undefined
  /** From what it stands on. */
  heightMm?: number | undefined
}

/** Place the bridge, and say how high it is: as the file says, or as the strings' heights call for. */
export function planBridge(
  {scale, bridge}: BuildValues,
  place: BoxPlace | undefined,
  action: Action | undefined,
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
