import type {BuildValues} from '../../build-file/schema.ts'
import {neckTaper} from '../neck-taper.ts'
import {neckWidthAt} from '../neck-width-at.ts'
import {nutAboveFaceMm} from '../nut-above-face.ts'
import type {PlanPart} from '../part.ts'
import type {Box, NeckInBox} from '../shape/box.ts'
import type {Action} from '../shape/strings.ts'
import {neckNotch} from './neck-notch.ts'
import {neckShim} from './neck-shim.ts'

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
