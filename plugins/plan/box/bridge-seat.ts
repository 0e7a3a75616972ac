import {inch} from '../../tables/units.ts'
import type {BridgePlace} from '../action/bridge.ts'
import type {BoxPlace, BoxSizes} from '../kit/box-place.ts'
import type {Settled} from '../kit/settled.ts'
import {toMark, type WouldDo} from '../kit/would-do.ts'

/** Where the foot of a bridge on the top comes to stand, in mm. */
export interface BridgeSeat {
  footMm: number
  /** Across the strings. */
  lengthMm: number
  /** From its foot to the inside of the tail wall. */
  fromTailWallMm: number
  /** How far it reaches over both sides of the box; negative: it does not. */
  overSidesMm: number
  /** From the box’s head-side edge to its foot. */
  fromHeadEdgeMm: number
  /** From its foot to the box’s tail edge. */
  fromTailEdgeMm: number
  leastFromTailWallMm: number
  /** The part of the box where bridges on the top sound best. */
  belongs: {from: number; to: number}
}

/** What a bridge on the top keeps from the tail wall (mm), and the part of the box it belongs in: common practice, no source. */
const keepsMm = inch(3 / 4)
const belongs = {from: 0.6, to: 0.88} as const

/**
 * Say where the foot of a bridge that stands on the top comes to stand, and where the box would have to lie for any
 * bridge to stand well. A bridge without a foot's length counts as its line, one without a width as wide as its
 * strings.
 */
export function planBridgeSeat(
  {values, rulerMm}: Settled,
  bridge: BridgePlace | undefined,
  place: BoxPlace | undefined,
  outside: BoxSizes['outside'] | undefined,
): {bridgeSeat?: BridgeSeat; wouldDo: WouldDo | undefined} | undefined {
  if (!bridge || place?.tailMm === undefined || !outside) return undefined
  const footMm = values.bridge?.foot?.mm ?? 0
  const isOnTop = bridge.on === 'top'
  const leastMm = isOnTop ? outside.sidesMm + keepsMm + footMm / 2 : 0
  const wouldDo = betterPlace(place, outside.lengthMm, {stationMm: bridge.stationMm, leastMm}, rulerMm)
  if (!isOnTop) return {wouldDo}
  const fromTailEdgeMm = place.tailMm - (bridge.stationMm + footMm / 2)
  const bridgeSeat = {
    footMm,
    lengthMm: values.bridge?.length?.mm ?? values.spacing?.bridge?.mm ?? 0,
    overSidesMm: (values.bridge?.length?.mm ?? 0) - outside.widthMm,
    fromTailEdgeMm,
    fromTailWallMm: fromTailEdgeMm - outside.sidesMm,
    fromHeadEdgeMm: bridge.stationMm - footMm / 2 - place.atMm,
    leastFromTailWallMm: keepsMm,
    belongs,
  }
  return {bridgeSeat, wouldDo}
}

/** The nearest place of the box, to a mark of the ruler, with the bridge line between 60 and 88 % of it and clear of the wall. */
function betterPlace(
  {tailMm = 0, placedBy}: BoxPlace,
  lengthMm: number,
  bridge: {stationMm: number; leastMm: number},
  rulerMm: number,
): WouldDo | undefined {
  const now = tailMm - bridge.stationMm
  const least = Math.max((1 - belongs.to) * lengthMm, bridge.leastMm)
  const most = (1 - belongs.from) * lengthMm
  if (least > most || (now >= least && now <= most)) return undefined
  const [fromTailMm, side] = now < least ? ([least, 'up'] as const) : ([most, 'down'] as const)
  if (placedBy === 'bridge.from-tail') return {path: placedBy, mm: toMark(fromTailMm, rulerMm, side)}
  return {path: 'box.at', mm: toMark(bridge.stationMm + fromTailMm - lengthMm, rulerMm, side)}
}
