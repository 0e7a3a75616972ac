import type {BuildValues} from '../../build-file/schema/schema.ts'
import {type Heights, nutAboveFaceMm} from '../action/action.ts'
import type {BridgePlace} from '../action/bridge.ts'
import type {BoxPlace, BoxSizes} from '../kit/box-place.ts'
import {leastGapMm} from '../neck-shape/inside.ts'
import {type NeckTaper, neckWidthAt} from '../neck-shape/taper.ts'
import {type Notch, notch, type Shim, shim} from './notch.ts'

/** How the neck meets the box, in mm. */
export interface NeckInBox {
  joins: 'on top' | 'through' | 'end'
  thicknessMm: number
  /** Its tail end, from the nut. */
  tailMm?: number | undefined
  /** Where it comes over the box’s head-side edge. */
  widthMm: number
  /** Its playing face above the box’s top. */
  aboveTopMm: number
  /** The same with its wood level with the top: the fingerboard’s thickness, or nothing. */
  faceLevelMm: number
  /** Its back below the box’s top; negative: above it. */
  backBelowTopMm: number
  /** How far above the top its thickness would put the playing face, where the file says that twice. */
  faceByThicknessMm?: number | undefined
  /** Daylight between a neck that runs through and the top. */
  gapMm?: number | undefined
  /** What is left of it inside the box, where the file says that and the daylight: as it says, and by the daylight. */
  insideTwice?: {saidMm: number; byGapMm: number} | undefined
  /** Where the bridge stands on that top. */
  leastGapMm?: number | undefined
  /** What a neck that runs through takes of the height inside. */
  heightInsideMm?: number | undefined
  /** The thickest neck that still runs through above the back. */
  tallestMm?: number | undefined
  /** The least height of its playing face above the top at which it runs through above the back. */
  leastAboveTopMm?: number | undefined
  /** How far it runs deeper than that; negative: it does not. */
  overBackMm?: number | undefined
  notch?: Notch | undefined
  shim?: Shim | undefined
  /** The string above the box’s top at its head-side edge. */
  stringAboveTopMm?: number | undefined
}

/** What the neck meets, and what stands on it. */
interface Around {
  place: BoxPlace | undefined
  outside: BoxSizes['outside'] | undefined
  taper: NeckTaper | undefined
  /** Playing face to back, all layers (mm). */
  thicknessMm: number | undefined
  bridge: BridgePlace | undefined
  heights: Heights | undefined
}

/**
 * Say how the neck meets the box: how high it stands over the top, how much of the height inside it takes, what a
 * notch takes from the wall, the daylight under the top, and the shim of a neck that tilts back.
 */
export function planNeckInBox(values: BuildValues, around: Around): NeckInBox | undefined {
  const {place, outside, taper, bridge, thicknessMm, heights: drawn} = around
  const {neck, box} = values
  const joins = neck?.joins?.value
  const widthMm = taper && neckWidthAt(place?.atMm ?? 0, taper)
  const aboveTopMm = neck?.['above-top']?.mm
  if (!joins || thicknessMm === undefined || widthMm === undefined || aboveTopMm === undefined)
    return undefined
  const isThrough = joins === 'through'
  const saidMm = isThrough ? neck?.inside?.mm : undefined
  const leftMm = thicknessMm - aboveTopMm - (box?.top?.thickness?.mm ?? 0)
  const givenGapMm = isThrough ? box?.['neck-gap']?.mm : undefined
  const gapMm = saidMm === undefined ? givenGapMm : leftMm - saidMm
  const usualGapMm = isThrough && bridge?.on === 'top' ? leastGapMm : undefined
  const tailMm = taper?.tailStationMm
  const tailWallMm = (place?.tailMm ?? 0) - (box?.sides?.mm ?? 0)
  const crossesTail = isThrough && place?.tailMm !== undefined && (tailMm ?? 0) > tailWallMm + 1e-6
  const tailWidthMm = crossesTail && taper ? neckWidthAt(place.tailMm!, taper) : undefined
  return {
    joins,
    thicknessMm,
    widthMm,
    aboveTopMm,
    faceLevelMm: values.fingerboard?.thickness?.mm ?? 0,
    backBelowTopMm: thicknessMm - aboveTopMm,
    tailMm,
    faceByThicknessMm: faceByThickness(values, thicknessMm),
    gapMm,
    insideTwice:
      saidMm === undefined || givenGapMm === undefined ? undefined : {saidMm, byGapMm: leftMm - givenGapMm},
    leastGapMm: usualGapMm,
    ...(isThrough && outside && heights({thicknessMm, aboveTopMm, gapMm: gapMm ?? usualGapMm}, outside)),
    notch: notch(values, {widthMm, tailWidthMm, aboveTopMm, thicknessMm}, outside),
    shim: shim(values, place, tailMm),
    stringAboveTopMm:
      place && bridge?.stationMm && drawn
        ? aboveTopMm + stringAtMm(place.atMm, bridge.stationMm, drawn)
        : undefined,
  }
}

/**
 * On top, the thickness (less what is let in) says how far the playing face stands above the top, as `above-top` does:
 * it runs from the playing face to the back, so a fingerboard counts in it, unless laminations of that thickness carry one.
 */
function faceByThickness({neck, box}: BuildValues, thicknessMm: number): number | undefined {
  const isSaid = neck?.thickness && (!neck.thickness.assumed || neck.laminations)
  const isTwice = isSaid && neck['above-top'] && !neck['above-top'].assumed && neck.joins?.value === 'on top'
  return isTwice ? thicknessMm - (box?.notch?.depth?.mm ?? 0) : undefined
}

/** What a neck that runs through takes of the height inside, and the tallest that would. */
function heights(
  neck: {thicknessMm: number; aboveTopMm: number; gapMm: number | undefined},
  {depthMm, topMm, backMm}: BoxSizes['outside'],
) {
  const upperMm = Math.max(topMm + (neck.gapMm ?? 0), -neck.aboveTopMm)
  const lowerMm = Math.min(neck.thicknessMm - neck.aboveTopMm, depthMm - backMm)
  return {
    heightInsideMm: Math.max(lowerMm - upperMm, 0),
    tallestMm: depthMm - backMm + neck.aboveTopMm,
    leastAboveTopMm: neck.thicknessMm - (depthMm - backMm),
    overBackMm: neck.thicknessMm - neck.aboveTopMm - (depthMm - backMm),
  }
}

/** How high the string stands above the playing face at a station: straight from nut to bridge. */
function stringAtMm(stationMm: number, bridgeMm: number, drawn: Heights): number {
  const nutMm = nutAboveFaceMm(drawn)
  return nutMm + ((drawn.bridgeHeightMm - nutMm) * stationMm) / bridgeMm
}
