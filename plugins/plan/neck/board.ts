import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import {type Heights, nutAboveFaceMm} from '../action/action.ts'
import {isNutStraight, sagittaMm, stringsOverRound} from '../action/round-face.ts'
import type {BoxPlace} from '../kit/box-place.ts'
import type {NeckModel} from '../neck-shape/model.ts'
import {type NeckTaper, neckWidthAt} from '../neck-shape/taper.ts'
import {lastLineMm, type Scale} from '../scale/scale.ts'

/** What a fingerboard keeps past its last line (mm): common practice, no source. */
const pastLastLineMm = inch(1 / 4)

/**
 * Say where a fingerboard without an end stops (mm from the nut line): at the box, or past the last line where that is
 * further or there is no box, and always before the bridge's foot. A neck that runs through is cut down at the box, and
 * its board stops there. Undefined without a board, and where neither box nor lines nor bridge tell.
 */
export function boardEndMm(values: BuildValues, place: BoxPlace | undefined): number | undefined {
  const {fingerboard, scale, bridge, neck} = values
  if (!fingerboard) return undefined
  const lastMm = lastLineMm(values)
  const isCutDown = neck?.joins?.value === 'through' && place !== undefined
  const reachMm = Math.max(place?.atMm ?? 0, lastMm === undefined || isCutDown ? 0 : lastMm + pastLastLineMm)
  const footMm = scale?.length && scale.length.mm - (bridge?.foot?.mm ?? 0) / 2
  const endMm = reachMm > 0 ? Math.min(reachMm, footMm ?? reachMm) : footMm
  return endMm !== undefined && endMm > (fingerboard.from?.mm ?? 0) ? endMm : undefined
}

/** A fingerboard that goes on over the box, where a neck that runs through is cut down: its end, and the box's (mm). */
export interface BoardOverBox {
  endMm: number
  edgeMm: number
}

/** Say whether the fingerboard of a neck that runs through would be sawn off where the neck is cut down for the top. */
export function boardOverBox({fingerboard}: BuildValues, {inside}: NeckModel): BoardOverBox | undefined {
  const endMm = fingerboard?.thickness && fingerboard.to?.mm
  const edgeMm = inside?.box[0] ?? 0
  return endMm !== undefined && edgeMm > 0 && endMm > edgeMm + 1e-6 ? {endMm, edgeMm} : undefined
}

/** A fingerboard whose face is round across the strings; all in mm. */
export interface BoardRadius {
  radiusMm: number
  /** Where it is checked, and how much lower the edges are there than the middle. */
  checks: {stationMm: number; widthMm: number; sagittaMm: number}[]
  /** What is left of the board at its thinnest edge. */
  edgeMm: number
  /** The smallest radius that leaves half the board at its edges, where this one leaves nothing. */
  wouldDoMm?: number | undefined
  /** A straight rod or bolt for a nut does not follow it. */
  isNutStraight: boolean
  /** How the strings follow it: over the middle of the board at the nut, and over what the bridge stands on. */
  strings?: {nutMm: number; bridgeMm: number}[] | undefined
  /** Of the curve that the strings make over the bridge. */
  bridgeRadiusMm?: number | undefined
}

interface Strung {
  taper: NeckTaper | undefined
  scale: Scale | undefined
  heights: Heights | undefined
}

/**
 * Follow a round fingerboard everywhere: what to check it by, what it leaves of the board's edges, and how high each
 * string stands at nut and bridge so that over its own part of the face it is as high at nut and octave as drawn.
 */
export function planBoardRadius(
  values: BuildValues,
  {taper, scale, heights}: Strung,
): BoardRadius | undefined {
  const {fingerboard, nut} = values
  const radiusMm = fingerboard?.radius?.mm
  const thicknessMm = fingerboard?.thickness?.mm
  if (radiusMm === undefined || thicknessMm === undefined || !taper) return undefined
  const ends = [Math.max(fingerboard?.from?.mm ?? 0, 0), fingerboard?.to?.mm]
  const checks = ends.flatMap((stationMm) => {
    const widthMm = stationMm === undefined ? undefined : neckWidthAt(stationMm, taper)
    if (stationMm === undefined || widthMm === undefined) return []
    return [{stationMm, widthMm, sagittaMm: sagittaMm(radiusMm, widthMm / 2) ?? Number.POSITIVE_INFINITY}]
  })
  const halfMm = Math.max(0, ...checks.map(({widthMm}) => widthMm / 2))
  const edgeMm = thicknessMm - Math.max(0, ...checks.map((check) => check.sagittaMm))
  const isWhole = edgeMm > 0
  return {
    radiusMm,
    checks: isWhole ? checks : [],
    edgeMm: Math.max(edgeMm, 0),
    wouldDoMm: isWhole ? undefined : (halfMm ** 2 + (thicknessMm / 2) ** 2) / thicknessMm,
    isNutStraight: isNutStraight(nut?.kind?.value),
    ...(isWhole && heights && scale ? stringsOver(values, scale, heights) : {}),
  }
}

/** Say how high each string stands at nut and bridge, over the middle of the board and over what the bridge stands on. */
function stringsOver(values: BuildValues, scale: Scale, heights: Heights) {
  const over = stringsOverRound(values, scale)
  if (!over) return {}
  const {bridgeHeightMm, bridgeStandsMm = 0} = heights
  const strings = over.map(({nutDropMm, bridgeDropMm}) => ({
    nutMm: nutAboveFaceMm(heights) - nutDropMm,
    bridgeMm: bridgeHeightMm - bridgeStandsMm - bridgeDropMm,
  }))
  const [offMm, dropMm] = [Math.abs(scale.bridgeOffMm?.at(-1) ?? 0), over.at(-1)?.bridgeDropMm ?? 0]
  return {strings, bridgeRadiusMm: dropMm > 0 ? (offMm ** 2 + dropMm ** 2) / (2 * dropMm) : undefined}
}
