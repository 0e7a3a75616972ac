import {radians} from '../../tables/units.ts'
import {type Heights, nutAboveFaceMm} from '../action/action.ts'
import type {Bridge} from '../action/bridge.ts'
import type {InsideBox} from '../neck-shape/inside.ts'

/** What loads a neck: all strings' pull (N), how high they stand above the playing face, and what the box does to it. */
export interface StringLoad {
  tensionN: number
  nutMm: number
  bridgeMm: number
  scaleMm: number
  /** Where a bridge on the top of a box pushes the walls that the neck runs through. */
  push?: Push | undefined
}

interface Push {
  downforceN: number
  /** How far the strings go down behind the bridge, for each mm. */
  behindSlope: number
  wallsMm: readonly [headMm: number, tailMm: number]
  /** What each wall presses the neck down with. */
  wallsN: readonly [headN: number, tailN: number]
}

/** What the strings are at. */
interface Strung {
  tensionTotalN: number | undefined
  scaleMm: number | undefined
  heights: Heights | undefined
  bridge: Pick<Bridge, 'on' | 'breakAngleDeg' | 'downforceN'> | undefined
  /** Where the strings end, where that is on the box. */
  onBox: {stationMm: number; heightMm: number} | undefined
}

/**
 * Gather what the strings do to a neck; undefined before strings, scale and heights are known. Run through a box, the
 * neck is pressed down at both walls, which share the bridge's push as a lever does: D·(x2 − xb)/(x2 − x1) at the first.
 * Strings that end on the box lift it there and draw it towards the nut, so it leans on its head wall instead: with
 * their pull forward times its height over where the tail wall holds the neck, less what they lift. Statics of the box.
 */
export function stringLoad(
  {tensionTotalN: tensionN, scaleMm, heights, bridge, onBox}: Strung,
  inside: InsideBox | undefined,
): StringLoad | undefined {
  if (tensionN === undefined || scaleMm === undefined || !heights) return undefined
  const load = {tensionN, nutMm: nutAboveFaceMm(heights), bridgeMm: heights.bridgeHeightMm, scaleMm}
  const {downforceN, breakAngleDeg} = bridge ?? {}
  if (!inside || bridge?.on !== 'top' || downforceN === undefined || breakAngleDeg === undefined) return load
  const [head, tail] = inside.wallsMm
  const behindRad = radians(breakAngleDeg)
  const behindSlope = Math.tan(behindRad)
  const [upN, forwardN] = onBox ? [tensionN * Math.sin(behindRad), tensionN * Math.cos(behindRad)] : [0, 0]
  const {stationMm = tail, heightMm = 0} = onBox ?? {}
  // The box passes the pull on to the neck in the tail wall, at the middle of what is left of it there.
  const heldMm = heightMm + (inside.underTopMm + inside.totalMm) / 2
  const turning = downforceN * (tail - scaleMm) - upN * (tail - stationMm) + forwardN * heldMm
  const atHead = turning / (tail - head)
  const wallsN = [atHead, downforceN - upN - atHead] as const
  return {...load, push: {downforceN, behindSlope, wallsMm: inside.wallsMm, wallsN}}
}

/**
 * Give the moment (N·mm, hollowing the neck) at a station whose neutral axis lies so deep under the playing face (mm):
 * the pull times the height of the string's line over the axis; past a bridge on the top of a box, and past each wall,
 * their push times its lever besides, so that at the anchors nothing is left but their own pull.
 * Source: statics of the part towards the nut.
 */
export function momentAt(load: StringLoad, stationMm: number, neutralAxisMm: number): number {
  const {tensionN, nutMm, bridgeMm, scaleMm, push} = load
  const behindMm = Math.max(stationMm - scaleMm, 0)
  const stringMm = nutMm + ((bridgeMm - nutMm) * Math.min(stationMm, scaleMm)) / scaleMm
  if (!push) return tensionN * (neutralAxisMm + stringMm)
  const {wallsMm, wallsN, downforceN, behindSlope} = push
  const heightMm = stringMm - behindSlope * behindMm
  const lever = (i: 0 | 1) => wallsN[i] * Math.max(stationMm - wallsMm[i], 0)
  return tensionN * (neutralAxisMm + heightMm) + downforceN * behindMm - lever(0) - lever(1)
}
