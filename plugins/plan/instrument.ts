import type {Build} from '../build-file/schema/build.ts'
import {type Action, planAction, planHeights} from './action/action.ts'
import {type Bridge, planBridge, planBridgePush, planBridgeSet} from './action/bridge.ts'
import {frettedStrings} from './action/fretted-string.ts'
import {type Intonation, planIntonation} from './action/intonation.ts'
import {type Nut, planNut} from './action/nut.ts'
import {planSaddles} from './action/saddle.ts'
import {
  type AnchorRow,
  anchorsOnBox,
  isAnchoredOnNeck,
  planAnchorConflicts,
  planAnchorRow,
  planAnchors,
} from './box/anchors.ts'
import {type Box, planWayIn, wholeBox} from './box/box.ts'
import {planAir} from './box/box-air.ts'
import {planBlocks} from './box/box-blocks.ts'
import {planBridgeSeat} from './box/bridge-seat.ts'
import {planLid} from './box/lid.ts'
import {type Pickup, planPickup} from './box/pickup.ts'
import {planSoundHoles} from './box/sound-holes.ts'
import {type EndJoint, planEndJoint} from './fasteners/end-joint.ts'
import type {Fastener} from './fasteners/fastener.ts'
import {planFasteners} from './fasteners/fasteners.ts'
import {planScrewPlaces, type ScrewPlace, screwsTooMany} from './fasteners/screw-places.ts'
import {planJointPull} from './joint/joint-pull.ts'
import {planNeckInBox} from './joint/neck-in-box.ts'
import {planBoxPlace, planBoxSizes} from './kit/box-place.ts'
import type {Conflict} from './kit/conflicts.ts'
import type {Context} from './kit/context.ts'
import type {Hole} from './kit/hole.ts'
import type {Assumption, Settled} from './kit/settled.ts'
import {planUnknownWoods, type UnknownWood} from './kit/unknown-woods.ts'
import {planHoles} from './layout/holes.ts'
import {type Outline, planOutline} from './layout/outline.ts'
import type {Making} from './making.ts'
import {planBow} from './neck/bow.ts'
import {headLayout} from './neck/head.ts'
import {planHeadConflicts} from './neck/head-layout.ts'
import {type Neck, planNeck} from './neck/neck.ts'
import {planBudget} from './neck-shape/budget.ts'
import {neckModel} from './neck-shape/model.ts'
import {neckTaper} from './neck-shape/taper.ts'
import {planEndWeakness} from './proposals/end-screws.ts'
import {longestScaleMm} from './scale/longest-scale.ts'
import {planScale, type Scale} from './scale/scale.ts'
import {settle} from './settle.ts'
import {withLengths} from './strings/string-lengths.ts'
import {planStrings, type StringPlan} from './strings/strings.ts'
import {type Placed, planTuners} from './strings/tuners.ts'

/** What is computed of the instrument itself. */
export interface Instrument {
  slug: string
  title?: string | undefined
  status?: string | undefined
  play?: string | undefined
  units: 'in' | 'mm'
  /** The finest mark that the maker works to. */
  rulerMm: number
  handed: 'right' | 'left'
  assumptions: readonly Assumption[]
  scale?: Scale | undefined
  strings?: StringPlan[] | undefined
  tensionTotalN?: number | undefined
  bridge?: Bridge | undefined
  intonation?: Intonation[] | undefined
  action?: Action | undefined
  /** What the strings rest on at the head end. */
  nut?: Nut | undefined
  neck?: Neck | undefined
  box?: Box | undefined
  tuners?: Placed[] | undefined
  anchors?: Placed[] | undefined
  screws?: ScrewPlace[] | undefined
  /** How a neck that ends at the box is held there. */
  endJoint?: EndJoint | undefined
  anchorRow?: AnchorRow | undefined
  holes?: Hole[] | undefined
  fasteners?: Fastener[] | undefined
  /** What is too near to what, of all that is bored. */
  conflicts?: Conflict[] | undefined
  pickup?: Pickup | undefined
  /** More screws than can be planned. */
  tooManyScrews?: {count: number; most: number} | undefined
  unknownWoods?: UnknownWood[] | undefined
  /** What drawings and templates are drawn from. */
  outline?: Outline | undefined
}

/**
 * Plan the instrument alone, all but what making it takes (`planMaking`): lengths in mm, forces in N, masses in kg, angles
 * in degrees, pitch in Hz and cents. Pure, and what cannot be computed yet is undefined.
 */
export function planInstrument(build: Build | Settled, context: Context): Instrument & Making {
  const settled = settle(build, context.journal)
  const {values, rulerMm} = settled

  const place = planBoxPlace(values)
  const taper = neckTaper(values)
  const longestMm = longestScaleMm(settled, context.pieces)
  const scale = planScale(settled, {place, taper, longestMm})
  const tuned = planStrings(settled)
  const {tensionTotalN} = tuned ?? {}
  const heights = planHeights(values, place)
  const nut = planNut(values, heights, rulerMm)
  const bridgePlace = planBridge(values, place, heights)
  const push = planBridgePush(values, place, bridgePlace, {action: heights, tensionTotalN})

  const budget = planBudget(values, place)
  const ends = {place, lengthMm: budget?.lengthMm ?? values.neck?.length?.mm}
  const model = neckModel(values, ends)

  const sizes = planBoxSizes(values)
  const outside = sizes?.outside
  const thicknessMm = model?.layup.totalMm
  const meets = {place, outside, taper, thicknessMm, bridge: bridgePlace, heights}
  const neckInBox = planNeckInBox(values, meets)
  const blocks = planBlocks(values, {place, sizes, neck: neckInBox, rulerMm})
  const seat = planBridgeSeat(settled, bridgePlace, place, outside)
  const bridgeSeat = seat?.bridgeSeat
  const standing = {place, sizes, seat: bridgeSeat, blocks, bridge: bridgePlace, push, heights, tensionTotalN}
  const lid = planLid(settled, standing)

  const carried = {on: bridgePlace?.on, ...push}
  const onNeck = isAnchoredOnNeck(values, place, neckInBox)
  const onBox = onNeck === false ? anchorsOnBox(values, place) : undefined
  const settlesMm = lid ? lid.sinkAfterCreepMm - lid.sinkMm : 0
  const needsGapMm = lid?.needsGapMm
  const strung = {ends, scale, tensionTotalN, heights, bridge: carried, onBox, settlesMm, needsGapMm}
  const bent = model && planBow(settled, model, strung)
  const bow = bent?.bow

  const action = planAction(values, heights, scale, {bow, lid})
  const tuners = planTuners(values, tuned?.strings)
  const strings = tuned && withLengths(tuned.strings, values, {tuners, place, budget})
  const fretted = frettedStrings(values, scale, strings, action)
  const intoned = planIntonation(fretted, {hollowMm: bow?.creepMm ?? 0, sinkMm: settlesMm})
  const saddles = planSaddles(fretted, intoned?.setbacks.setbacks, scale?.bridgeOffMm)
  const setAt = planBridgeSet(scale, intoned?.setbacks.setbacks, saddles)
  const bridge = bridgePlace && {...bridgePlace, setAt, ...intoned?.setbacks, ...saddles, ...push}
  const anchors = planAnchors(values, place, tuned?.strings)

  const onHead = headLayout(values, model, tuners, scale)
  const bare = planNeck(settled, model, budget, {
    scale,
    tuners,
    layout: onHead,
    tensionTotalN,
    action,
    nut,
    heights,
  })
  const neck = bare && {...bare, ...bent}

  const around = {place, outside, neck: neckInBox, taper, blocks, bridge, bridgeSeat}
  const {soundHoles, conflicts: holeConflicts} = planSoundHoles(settled, around)
  const air = planAir(settled, {place, sizes, neck: neckInBox, taper, scale, strings})
  const wayIn = planWayIn(values)
  const box = wholeBox({
    ...place,
    ...sizes,
    neck: neckInBox,
    blocks,
    ...seat,
    lid,
    soundHoles,
    ...wayIn,
    ...air,
  })

  const anchorRow = planAnchorRow(values, anchors, onNeck, taper)
  const pickup = planPickup(values, box, bridge)
  const pull = planJointPull(bridge, onNeck, action, tensionTotalN)
  const screws = planScrewPlaces(values, place)
  const end = box && planEndJoint(settled, {box, pull})
  const screwed = planFasteners(settled, screws, {box, taper}, {pull, end})
  const {fasteners, conflicts: screwConflicts} = screwed
  const weak = box && planEndWeakness({settled, box, place, taper, pull}, end, fasteners)
  const endJoint = end && {...end, weak}
  const jack = pickup?.jack
  const conflicts = [
    ...holeConflicts,
    ...planHeadConflicts(onHead, rulerMm),
    ...planAnchorConflicts(values, anchorRow),
    ...screwConflicts,
  ]
  const holes = planHoles(settled, {tuners, anchors, isAnchoredOnNeck: onNeck, box, fasteners, jack})

  const intonation = intoned?.intonation
  const outline = planOutline(values, {model, taper, scale, bridge})

  return {
    slug: settled.slug,
    title: values.title?.value,
    status: values.status?.value,
    play: values.play?.value,
    units: settled.units,
    rulerMm,
    handed: values.handed?.value ?? 'right',
    assumptions: settled.assumptions,
    scale,
    strings,
    layout: undefined,
    tensionTotalN,
    tunings: undefined,
    bridge,
    intonation,
    action,
    nut,
    neck,
    box,
    tuners,
    anchors,
    screws,
    endJoint,
    anchorRow,
    holes,
    fasteners,
    conflicts: conflicts.length ? conflicts : undefined,
    pickup,
    // Its making has its place in the order of the whole.
    work: undefined,
    workTime: undefined,
    cuts: undefined,
    tooManyParts: undefined,
    tooManyScrews: screwsTooMany(values),
    stockTroubles: undefined,
    bill: undefined,
    cost: undefined,
    cautions: undefined,
    asBuilt: undefined,
    settingUp: undefined,
    unknownWoods: planUnknownWoods(values),
    outline,
  }
}
