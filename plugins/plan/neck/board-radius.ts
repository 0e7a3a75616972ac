import type {BuildValues} from '../../build-file/schema.ts'
import {type Heights, nutAboveFaceMm} from '../action.ts'
import type {Scale} from '../scale.ts'
import {type NeckTaper, neckWidthAt} from './taper.ts'

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

/**
 * Give the sagitta (mm) of a round face: how much lower it is so far off its middle than there, R − √(R² − x²).
 * Source: geometry. Undefined past the edge of the whole circle.
 */
export function sagittaMm(radiusMm: number, offMm: number): number | undefined {
  if (Math.abs(offMm) > radiusMm) return undefined
  return offMm ** 2 / (radiusMm + Math.sqrt(radiusMm ** 2 - offMm ** 2))
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
  {fingerboard, nut}: BuildValues,
  {taper, scale, heights}: Strung,
): BoardRadius | undefined {
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
  const kind = nut?.kind?.value
  const isNutStraight = kind === 'rod' || kind === 'bolt'
  return {
    radiusMm,
    checks: isWhole ? checks : [],
    edgeMm: Math.max(edgeMm, 0),
    wouldDoMm: isWhole ? undefined : (halfMm ** 2 + (thicknessMm / 2) ** 2) / thicknessMm,
    isNutStraight,
    ...(isWhole && heights && scale ? stringsOver(radiusMm, scale, heights) : {}),
  }
}

/** Set each string over its own part of a round face: its straight line has to pass nut and octave as drawn. */
function stringsOver(radiusMm: number, {nutOffMm, bridgeOffMm}: Scale, heights: Heights) {
  if (!nutOffMm || !bridgeOffMm) return {}
  const {bridgeHeightMm, bridgeStandsMm = 0} = heights
  const down = (offMm: number) => sagittaMm(radiusMm, offMm) ?? 0
  const drops = nutOffMm.map((nutOff, i) => 2 * down((nutOff + bridgeOffMm[i]!) / 2) - down(nutOff))
  const strings = nutOffMm.map((nutOff, i) => ({
    nutMm: nutAboveFaceMm(heights) - down(nutOff),
    bridgeMm: bridgeHeightMm - bridgeStandsMm - drops[i]!,
  }))
  const [offMm, dropMm] = [Math.abs(bridgeOffMm.at(-1) ?? 0), drops.at(-1) ?? 0]
  return {strings, bridgeRadiusMm: dropMm > 0 ? (offMm ** 2 + dropMm ** 2) / (2 * dropMm) : undefined}
}
