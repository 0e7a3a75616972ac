import type {BuildValues} from '../../build-file/schema.ts'
import {type Action, nutAboveFaceMm} from '../action.ts'
import {neckTaper, neckWidthAt} from '../neck/taper.ts'
import type {PlanPart} from '../part.ts'
import type {Box} from './box.ts'

export interface NeckInBox {
  /** on top, through or end. */
  joins: string
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
  /** Where the bridge stands on that top. */
  leastGapMm?: number | undefined
  /** What a neck that runs through takes of the height inside. */
  heightInsideMm?: number | undefined
  /** The thickest neck that still runs through above the back. */
  tallestMm?: number | undefined
  notch?:
    | {
        widthMm: number
        /** Down from the box’s upper edge. */
        depthMm: number
        /** What is left of the wall under it, above the back. */
        leftMm?: number | undefined
        /** The deepest that leaves enough of the wall. */
        deepestMm?: number | undefined
        isGiven: boolean
        /** What is left of the wall at each side of it. */
        besideMm?: number | undefined
      }
    | undefined
  shim?:
    | {
        lengthMm: number
        /** At its thick end. */
        thickMm: number
        angleDeg: number
      }
    | undefined
  /** The string above the box’s top at its head-side edge. */
  stringAboveTopMm?: number | undefined
}

/** Daylight under a top that carries the bridge (mm): common practice, no source. */
const leastGapMm = 25.4 / 32

/**
 * Say how the neck meets the box, in mm: how high it stands over the top, how much of the height inside it takes,
 * what a notch takes from the wall, the daylight under the top, and the shim of a neck that tilts back.
 */
export const neckInBox: PlanPart = ({values}, soFar) => {
  const {neck} = values
  const joins = neck?.joins?.value
  const thicknessMm = neck?.thickness?.mm
  const taper = neckTaper(values)
  const widthMm = taper && neckWidthAt(soFar.box?.atMm ?? 0, taper)
  const aboveTopMm = neck?.['above-top']?.mm
  if (!joins || thicknessMm === undefined || widthMm === undefined || aboveTopMm === undefined) return {}
  const tailMm = taper?.tailStationMm
  const fit: NeckInBox = {
    joins,
    thicknessMm,
    widthMm,
    aboveTopMm,
    faceLevelMm: values.fingerboard?.thickness?.mm ?? 0,
    backBelowTopMm: thicknessMm - aboveTopMm,
    ...(tailMm !== undefined && {tailMm}),
    ...sayTwice(values),
    ...(joins === 'through' && soFar.bridge?.on === 'top' && {leastGapMm}),
    ...(joins === 'through' && runThrough(values, soFar.box, thicknessMm, aboveTopMm)),
    ...neckNotch(values, soFar.box, {widthMm, aboveTopMm, thicknessMm}),
    ...neckShim(values, soFar.box, tailMm),
    ...stringAboveTop(soFar.box?.atMm, soFar.bridge?.stationMm, soFar.action, aboveTopMm),
  }
  return {box: {...soFar.box, neck: fit}}
}

/**
 * On top, the thickness (less what is let in) says how far the playing face stands above the top, as `above-top` does;
 * a fingerboard may be counted in the thickness or come on top of it.
 */
function sayTwice({neck, box, fingerboard}: BuildValues): Partial<NeckInBox> {
  const isSaid = neck?.thickness && (!neck.thickness.assumed || neck.laminations)
  const isTwice = isSaid && neck['above-top'] && !neck['above-top'].assumed && neck.joins?.value === 'on top'
  if (!isTwice) return {}
  const faceMm = neck.thickness!.mm - (box?.notch?.depth?.mm ?? 0)
  const boardMm = fingerboard?.thickness?.mm ?? 0
  const withBoard =
    Math.abs(neck['above-top']!.mm - faceMm - boardMm) < Math.abs(neck['above-top']!.mm - faceMm)
  return {faceByThicknessMm: withBoard ? faceMm + boardMm : faceMm}
}

function runThrough(
  {neck, box}: BuildValues,
  placed: Box | undefined,
  thicknessMm: number,
  aboveTopMm: number,
): Partial<NeckInBox> {
  const outside = placed?.outside
  const gapMm = box?.['neck-gap']?.mm
  if (!outside || !neck) return gapMm === undefined ? {} : {gapMm}
  const upperMm = Math.max(outside.topMm + (gapMm ?? 0), -aboveTopMm)
  const lowerMm = Math.min(thicknessMm - aboveTopMm, outside.depthMm - outside.backMm)
  return {
    ...(gapMm !== undefined && {gapMm}),
    heightInsideMm: Math.max(lowerMm - upperMm, 0),
    tallestMm: outside.depthMm - outside.backMm + aboveTopMm,
  }
}

function stringAboveTop(
  atMm: number | undefined,
  scaleMm: number | undefined,
  action: Action | undefined,
  aboveTopMm: number,
): Partial<NeckInBox> {
  if (atMm === undefined || !scaleMm || !action) return {}
  const nutMm = nutAboveFaceMm(action)
  const stringMm = nutMm + ((action.bridgeHeightMm - nutMm) * atMm) / scaleMm
  return {stringAboveTopMm: aboveTopMm + stringMm}
}

/** What must be left of a wall under a notch (mm): common practice, no source. */
const wallLeftMm = 25.4 / 8
/**
 * Size the notch for the neck (mm): the file's, or where a neck runs through the one that its walls need, with what
 * it leaves of the wall.
 */
function neckNotch(
  {neck, box}: BuildValues,
  placed: Box | undefined,
  {widthMm, aboveTopMm, thicknessMm}: {widthMm: number; aboveTopMm: number; thicknessMm: number},
): Partial<NeckInBox> {
  const given = box?.notch
  const isGiven = given?.depth !== undefined
  const isNeeded = neck?.joins?.value === 'through' && thicknessMm > aboveTopMm
  const depthMm = given?.depth?.mm ?? (isNeeded ? thicknessMm - aboveTopMm : undefined)
  if (depthMm === undefined) return {}
  const wallMm = placed?.outside && placed.outside.depthMm - placed.outside.backMm
  return {
    notch: {
      widthMm: given?.width?.mm ?? widthMm,
      depthMm,
      isGiven,
      ...(placed?.outside && {besideMm: (placed.outside.widthMm - (given?.width?.mm ?? widthMm)) / 2}),
      ...(wallMm !== undefined && {leftMm: wallMm - depthMm, deepestMm: wallMm - wallLeftMm}),
    },
  }
}

/** Size the shim (mm) of a neck on top that tilts back: it stands on a wedge as long as its seat on the box, thick at the tail end. */
function neckShim(
  {neck}: BuildValues,
  placed: Box | undefined,
  tailMm: number | undefined,
): Partial<NeckInBox> {
  const angleDeg = neck?.angle?.deg ?? 0
  const {atMm, tailMm: boxTailMm} = placed ?? {}
  if (angleDeg === 0 || neck?.joins?.value !== 'on top' || atMm === undefined || boxTailMm === undefined)
    return {}
  const lengthMm = Math.min(tailMm ?? boxTailMm, boxTailMm) - atMm
  if (lengthMm <= 0) return {}
  return {
    shim: {angleDeg, lengthMm, thickMm: lengthMm * Math.tan((Math.abs(angleDeg) * Math.PI) / 180)},
  }
}
