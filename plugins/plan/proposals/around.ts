import type {BuildValues} from '../../build-file/schema/schema.ts'
import {type Action, planAction, planHeights} from '../action/action.ts'
import {type Bridge, type BridgePush, planBridge, planBridgePush} from '../action/bridge.ts'
import {isAnchoredOnNeck} from '../box/anchors.ts'
import {type Block, planBlocks} from '../box/box-blocks.ts'
import {type JointPull, planJointPull} from '../joint/joint-pull.ts'
import {type NeckInBox, planNeckInBox} from '../joint/neck-in-box.ts'
import {type BoxPlace, type BoxSizes, planBoxPlace, planBoxSizes} from '../kit/box-place.ts'
import type {Proposal} from '../kit/proposal.ts'
import type {Settled} from '../kit/settled.ts'
import {neckLayers} from '../neck-shape/layers.ts'
import {type NeckTaper, neckTaper} from '../neck-shape/taper.ts'

/** What a proposal has to fit: all lengths in mm, forces in N. */
export interface Around {
  values: BuildValues
  place: BoxPlace | undefined
  sizes: BoxSizes | undefined
  taper: NeckTaper | undefined
  neck: NeckInBox | undefined
  blocks: Block[] | undefined
  bridge: Bridge | undefined
  push: BridgePush | undefined
  action: Action | undefined
  /** Playing face to back. */
  neckMm: number | undefined
  /** What the strings ask of the joint of neck and box. */
  pull: JointPull | undefined
  /** Of all strings. */
  tensionTotalN: number | undefined
}

/** Propose what one part of a build leaves open; nothing where it leaves nothing open. */
export type Propose = (settled: Settled, around: Around) => Proposal[]

/** Work out what is around, as far as a proposal needs it: the same computations as the plan's, before its details. */
export function lookAround(settled: Settled, tensionTotalN: number | undefined): Around {
  const {values, rulerMm} = settled
  const place = planBoxPlace(values)
  const sizes = planBoxSizes(values)
  const taper = neckTaper(values)
  const heights = planHeights(values, place)
  const action = planAction(values, heights, undefined, {bow: undefined, lid: undefined})
  const bridgePlace = planBridge(values, place, heights)
  const push = planBridgePush(values, place, bridgePlace, {action: heights, tensionTotalN})
  const bridge = bridgePlace && {...bridgePlace, ...push}
  const thicknessMm = neckLayers(values, (place?.atMm ?? 0) / 2)?.totalMm
  const meets = {place, outside: sizes?.outside, taper, thicknessMm, bridge: bridgePlace, heights}
  const neck = planNeckInBox(values, meets)
  return {
    values,
    place,
    sizes,
    taper,
    neck,
    blocks: planBlocks(values, {place, sizes, neck, rulerMm}),
    bridge,
    push,
    action,
    neckMm: thicknessMm,
    pull: planJointPull(bridge, isAnchoredOnNeck(values, place, neck), action, tensionTotalN),
    tensionTotalN,
  }
}
