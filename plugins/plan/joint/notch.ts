import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch, radians} from '../../tables/units.ts'
import type {BoxPlace, BoxSizes} from '../kit/box-place.ts'

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
export function notch(
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
export function shim(
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
