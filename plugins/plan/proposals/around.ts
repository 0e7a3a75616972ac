import type {BuildValues} from '../../build-file/schema.ts'
import {type Action, planAction, planHeights} from '../action.ts'
import {isAnchoredOnNeck} from '../anchors.ts'
import {type Block, planBlocks} from '../box/box-blocks.ts'
import {type BoxPlace, type BoxSizes, planBoxPlace, planBoxSizes} from '../box/box-place.ts'
import {type NeckInBox, planNeckInBox} from '../box/neck-in-box.ts'
import {type Bridge, type BridgePush, planBridge, planBridgePush} from '../bridge.ts'
import {type JointPull, planJointPull} from '../fasteners/joint-pull.ts'
import {neckLayers} from '../neck/layers.ts'
import {type NeckTaper, neckTaper} from '../neck/taper.ts'
import type {Settled} from '../settled.ts'
import type {Proposal} from './proposal.ts'

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
