import type {BuildValues} from '../../build-file/schema.ts'
import {inch, radians} from '../../tables/units.ts'
import type {Heights} from '../action.ts'
import {nutAboveFaceMm} from '../action.ts'
import type {BridgePlace} from '../bridge.ts'
import {leastGapMm} from '../neck/inside.ts'
import {type NeckTaper, neckWidthAt} from '../neck/taper.ts'
import type {BoxPlace, BoxSizes} from './box-place.ts'

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

export interface Notch {
  widthMm: number
  /** Down from the box’s upper edge. */
  depthMm: number
  isGiven: boolean
  /** With the top off: down from the wall’s own edge. */
  topOffMm?: number | undefined
  /** What of the neck lies below the box’s upper edge. */
  neckMm: number
  /** At the tail wall, where a neck that runs through is wider or narrower there. */
  tailWidthMm?: number | undefined
  /** What is left of the wall under it, above the back. */
  leftMm?: number | undefined
  /** The deepest that leaves enough of the wall. */
  deepestMm?: number | undefined
  /** What is left of the wall at each side of it. */
  besideMm?: number | undefined
}

export interface Shim {
  lengthMm: number
  /** At its thick end. */
  thickMm: number
  angleDeg: number
}

/** What must be left of a wall under a notch (mm): common practice, no source. */
const wallLeftMm = inch(1 / 8)

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
    leastGapMm: isThrough && bridge?.on === 'top' ? leastGapMm : undefined,
    ...(isThrough && outside && heights({thicknessMm, aboveTopMm, gapMm}, outside)),
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

/** A neck where it crosses the box’s walls, in mm. */
interface Crossing {
  widthMm: number
  tailWidthMm: number | undefined
  aboveTopMm: number
  thicknessMm: number
}

/**
 * Size the notch for the neck: the file's, or where a neck runs through the one that its walls need; a tapered neck
 * needs one of its own width in each wall. Depths count from the box's upper edge with the top on.
 */
function notch(
  {neck, box}: BuildValues,
  {widthMm, tailWidthMm, aboveTopMm, thicknessMm}: Crossing,
  outside: BoxSizes['outside'] | undefined,
): Notch | undefined {
  const given = box?.notch
  const isNeeded = neck?.joins?.value === 'through' && thicknessMm > aboveTopMm
  const depthMm = given?.depth?.mm ?? (isNeeded ? thicknessMm - aboveTopMm : undefined)
  if (depthMm === undefined) return undefined
  const wallMm = outside && outside.depthMm - outside.backMm
  const acrossMm = given?.width?.mm ?? widthMm
  return {
    widthMm: acrossMm,
    depthMm,
    isGiven: given?.depth !== undefined,
    topOffMm: outside && Math.max(depthMm - outside.topMm, 0),
    neckMm: neck?.joins?.value === 'on top' ? thicknessMm : thicknessMm - aboveTopMm,
    tailWidthMm: Math.abs((tailWidthMm ?? widthMm) - widthMm) > 1e-6 ? tailWidthMm : undefined,
    besideMm: outside && (outside.widthMm - acrossMm) / 2,
    leftMm: wallMm === undefined ? undefined : wallMm - depthMm,
    deepestMm: wallMm === undefined ? undefined : wallMm - wallLeftMm,
  }
}

/** Size the wedge under a neck on top that tilts back: as long as its seat on the box, thick at the tail end. */
function shim(
  {neck}: BuildValues,
  place: BoxPlace | undefined,
  neckTailMm: number | undefined,
): Shim | undefined {
  const angleDeg = neck?.angle?.deg ?? 0
  if (angleDeg === 0 || neck?.joins?.value !== 'on top' || place?.tailMm === undefined) return undefined
  const lengthMm = Math.min(neckTailMm ?? place.tailMm, place.tailMm) - place.atMm
  if (lengthMm <= 0) return undefined
  return {angleDeg, lengthMm, thickMm: lengthMm * Math.tan(radians(Math.abs(angleDeg)))}
}
