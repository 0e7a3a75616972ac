import type {BuildValues} from '../../build-file/schema.ts'
import type {Heights} from '../action.ts'
import {isAnchoredAtBridge} from '../anchors.ts'
import type {BridgePlace, BridgePush} from '../bridge.ts'
import type {Block} from './box-blocks.ts'
import type {BoxPlace, BoxSizes} from './box-place.ts'
import type {BridgeSeat} from './bridge-seat.ts'

/** What the top lies on, what stands on it and what the strings do there. */
export interface OnLid {
  place: BoxPlace | undefined
  sizes: BoxSizes | undefined
  seat: BridgeSeat | undefined
  blocks: readonly Block[] | undefined
  bridge: BridgePlace | undefined
  push: BridgePush | undefined
  heights: Heights | undefined
  tensionTotalN: number | undefined
}

/** What the strings do to a bridge on the top. */
export interface StringsOn {
  pushN: number
  /** Tipping it forward is negative. */
  momentNmm: number
  /** The strings over the middle of the top. */
  heightMm: number
}

/**
 * Say what the strings do to the bridge: those that run on to anchors behind it push it down (N); those that are held
 * at it draw it towards the nut as well, which tips it: their pull times their height (N·mm). Statics of a string.
 */
export function loadOn(
  values: BuildValues,
  {place, sizes, bridge, push, heights, tensionTotalN}: OnLid,
): StringsOn | undefined {
  if (!bridge || bridge.heightMm === undefined) return undefined
  const heightMm = bridge.heightMm + (sizes?.outside.topMm ?? 0) / 2
  if (isAnchoredAtBridge(values, place)) {
    if (!heights || tensionTotalN === undefined) return undefined
    const down = (heights.bridgeHeightMm - heights.nutMm - heights.crownMm) / bridge.stationMm
    const along = 1 / Math.hypot(1, down)
    return {
      pushN: tensionTotalN * down * along,
      momentNmm: 0 - tensionTotalN * along * heightMm,
      heightMm,
    }
  }
  return push?.downforceN === undefined ? undefined : {pushN: push.downforceN, momentNmm: 0, heightMm}
}

/** Find the wall that a bridge's foot stands on, or the two sides that it spans. */
export function wallUnder(
  seat: BridgeSeat,
  {inside, outside}: BoxSizes,
): 'head wall' | 'tail wall' | 'side walls' | undefined {
  if (seat.lengthMm >= inside!.widthMm) return 'side walls'
  if (seat.fromTailWallMm < 0) return 'tail wall'
  return seat.fromHeadEdgeMm < outside.sidesMm ? 'head wall' : undefined
}
