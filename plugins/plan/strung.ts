import {planAction, planHeights} from './action/action.ts'
import {planBridge, planBridgePush, planBridgeSet} from './action/bridge.ts'
import {frettedStrings} from './action/fretted-strings.ts'
import {planIntonation} from './action/intonation.ts'
import {planNut} from './action/nut.ts'
import {planSaddles} from './action/saddle.ts'
import {isAnchoredOnNeck as anchoredOnNeck, anchorsOnBox} from './box/anchors.ts'
import {planBlocks} from './box/box-blocks.ts'
import {planBridgeSeat} from './box/bridge-seat.ts'
import {planLid} from './box/lid.ts'
import {planNeckInBox} from './joint/neck-in-box.ts'
import {planBoxPlace, planBoxSizes} from './kit/box-place.ts'
import type {Context} from './kit/context.ts'
import type {Settled} from './kit/settled.ts'
import {planBow} from './neck/bow.ts'
import {planBudget} from './neck-shape/budget.ts'
import {neckModel} from './neck-shape/model.ts'
import {neckTaper} from './neck-shape/taper.ts'
import {longestScaleMm} from './scale/longest-scale.ts'
import {planScale} from './scale/scale.ts'
import {withLengths} from './strings/string-lengths.ts'
import {planStrings} from './strings/strings.ts'
import {planTuners} from './strings/tuners.ts'

// The strings and what bears them, in the order of cause: as drawn, what gives way under them, and how they lie then.

export type Drawn = ReturnType<typeof planDrawn>
export type Bearing = ReturnType<typeof planBearing>
export type Strung = ReturnType<typeof planStrung>

/** Plan what is drawn: where box and bridge lie, what the strings are, the neck's shape. */
export function planDrawn(settled: Settled, context: Context) {
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
  return {place, taper, scale, tuned, tensionTotalN, heights, nut, bridgePlace, push, budget, ends, model}
}

/** Plan what bears the strings: how far the top sinks under the bridge (mm), and how far the neck bows. */
export function planBearing(settled: Settled, drawn: Drawn) {
  const {values, rulerMm} = settled
  const {place, taper, scale, tensionTotalN, heights, bridgePlace, push, ends, model} = drawn
  const sizes = planBoxSizes(values)
  const outside = sizes?.outside
  const thicknessMm = model?.layup.totalMm
  const meets = {place, outside, taper, thicknessMm, bridge: bridgePlace, heights}
  const neckInBox = planNeckInBox(values, meets)
  const blocks = planBlocks(values, {place, sizes, neck: neckInBox, rulerMm})
  const seat = planBridgeSeat(settled, bridgePlace, place, outside)
  const under = {place, sizes, seat: seat?.bridgeSeat, blocks}
  const lid = planLid(settled, {...under, bridge: bridgePlace, push, heights, tensionTotalN})
  const settlesMm = lid ? lid.sinkAfterCreepMm - lid.sinkMm : 0
  const isAnchoredOnNeck = anchoredOnNeck(values, place, neckInBox)
  const onBox = isAnchoredOnNeck === false ? anchorsOnBox(values, place) : undefined
  const pull = {scale, tensionTotalN, heights, bridge: {on: bridgePlace?.on, ...push}, onBox}
  const bent = model && planBow(settled, model, {ends, ...pull, settlesMm, needsGapMm: lid?.needsGapMm})
  return {sizes, neckInBox, blocks, seat, lid, settlesMm, isAnchoredOnNeck, bent}
}

/** Plan how the strings lie once neck and top have given way, and where the bridge is set for them to sound right. */
export function planStrung({values}: Settled, drawn: Drawn, {bent, lid, settlesMm}: Bearing) {
  const {place, scale, tuned, heights, bridgePlace, push, budget} = drawn
  const bow = bent?.bow
  const action = planAction(values, heights, scale, {bow, lid})
  const tuners = planTuners(values, tuned?.strings)
  const strings = tuned && withLengths(tuned.strings, values, {tuners, place, budget})
  const fretted = frettedStrings(values, scale, strings, action)
  const intoned = planIntonation(fretted, {hollowMm: bow?.creepMm ?? 0, sinkMm: settlesMm})
  const saddles = planSaddles(fretted, intoned?.setbacks.setbacks, scale?.bridgeOffMm)
  const setAt = planBridgeSet(scale, intoned?.setbacks.setbacks, saddles)
  const bridge = bridgePlace && {...bridgePlace, setAt, ...intoned?.setbacks, ...saddles, ...push}
  return {action, tuners, strings, bridge, intonation: intoned?.intonation}
}
