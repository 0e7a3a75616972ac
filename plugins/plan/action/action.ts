import type {BuildValues} from '../../build-file/schema/schema.ts'
import {radians} from '../../tables/units.ts'
import type {BoxPlace} from '../kit/box-place.ts'
import type {Scale} from '../scale/scale.ts'
import {stringsOverRound} from './round-face.ts'

/** How high the strings are drawn over the playing face, in mm: as they stand on the strung instrument. */
export interface Heights {
  nutMm: number
  octaveMm: number
  /** Above the playing face. */
  bridgeHeightMm: number
  /** The frets’ crowns above the playing face; 0 where not given or fretless. */
  crownMm: number
  /** What the bridge stands on, above the playing face; negative: below. */
  bridgeStandsMm?: number | undefined
  /** The bridge height that lets the strings run level with the playing face. */
  levelHeightMm?: number | undefined
  /** Where the file gives all three heights: the bridge height that nut and octave call for. */
  calledHeightMm?: number | undefined
}

/** How high the strings stand, in mm: `nutMm` and what follows the lines above the crowns. */
export interface Action extends Heights {
  /** The hollow of the strung neck at half the scale length; 0 where nothing tells it. */
  reliefMm: number
  /** What tells it: the file, or the bow that the strings' pull is reckoned to make. */
  reliefFrom?: 'file' | 'bow' | undefined
  /** How far a top sinks under the bridge that stands on it, when strung. */
  sinkMm: number
  /** The bridge above the bare, straight playing face and the level top, for the strung octave to be as drawn. */
  bridgeToBuildMm: number
  /** The same from what the bridge stands on. */
  bridgeBuiltMm: number
  /** What the octave comes to once neck and top have crept as far as they may. */
  octaveAfterCreepMm?: number | undefined
  /** The least height of the strings over nut, lines and octave. */
  leastMm: number
  /** By string, then line: over its own part of the face. */
  atLinesMm?: number[][] | undefined
}

/**
 * Draw the strings at their heights (mm): at the nut and at half the scale length above the playing face (above the
 * crowns where fretted), at the bridge above the playing face. The three lie on one straight line once all are taken
 * from the playing face, so two give the third; where the file gives all three, the bridge that nut and octave call
 * for is told besides.
 */
export function planHeights(values: BuildValues, place: BoxPlace | undefined): Heights | undefined {
  const lengthMm = values.scale?.length?.mm
  if (lengthMm === undefined) return undefined
  const crownMm = values.scale?.fretted?.value ? (values.frets?.crown?.mm ?? 0) : 0
  const standsMm = bridgeStandsMm(values, lengthMm, place)
  const ownHeightMm = values.bridge?.height?.mm
  const three = thirdHeight(
    values.action?.nut && values.action.nut.mm + crownMm,
    values.action?.octave && values.action.octave.mm + crownMm,
    ownHeightMm !== undefined && standsMm !== undefined ? ownHeightMm + standsMm : undefined,
  )
  if (!three) return undefined
  const {nut, octave, bridge, called} = three
  const fromStand = (mm: number) => (standsMm === undefined ? undefined : mm - standsMm)
  return {
    nutMm: nut - crownMm,
    octaveMm: octave - crownMm,
    bridgeHeightMm: bridge,
    crownMm,
    levelHeightMm: fromStand(Math.max(nut, octave)),
    bridgeStandsMm: standsMm,
    calledHeightMm: called === undefined ? undefined : fromStand(called),
  }
}

/** What the strings make of what they stand on, in mm. */
interface GivenWay {
  bow: Hollow | undefined
  lid: {sinkMm: number; sinkAfterCreepMm: number} | undefined
}

/** The hollow that the strings make of a neck (mm), and what it grows by under a load that stays. */
interface Hollow {
  octaveMm: number
  creepMm: number
  /** By line. */
  atLinesMm?: readonly number[] | undefined
}

/**
 * Say how high the strings stand at every line of the strung instrument, whose neck is hollow: by the relief that the
 * file gives, else by the bow. Drawn heights are those of the strung instrument (common practice, no source), so the
 * bridge is built lower by twice the hollow at the octave, higher by what the top sinks under it, and the octave stands
 * as drawn. All in mm.
 */
export function planAction(
  values: BuildValues,
  heights: Heights | undefined,
  laidOut: Pick<Scale, 'lines' | 'nutOffMm' | 'bridgeOffMm'> | undefined,
  {bow, lid}: GivenWay,
): Action | undefined {
  const {action, strings, scale} = values
  const {lines} = laidOut ?? {}
  const lengthMm = scale?.length?.mm
  if (!heights || lengthMm === undefined) return undefined
  const givenMm = action?.relief?.mm
  const reliefMm = givenMm ?? bow?.octaveMm ?? 0
  const sinkMm = lid?.sinkMm ?? 0
  const settlesMm = lid ? lid.sinkAfterCreepMm - sinkMm : 0
  const strungMm = heights.bridgeHeightMm - 2 * reliefMm
  const {nutMm, octaveMm, crownMm} = heights
  const rise = (strungMm - crownMm - nutMm) / lengthMm
  const heightsMm = lines?.map(({fromNutMm}, i) => {
    const hollowMm =
      givenMm === undefined ? (bow?.atLinesMm?.[i] ?? 0) : reliefAtMm(givenMm, fromNutMm, lengthMm)
    return nutMm + rise * fromNutMm + hollowMm
  })
  const overRound = stringsOverRound(values, laidOut)
  const ofStrings =
    heightsMm &&
    strings?.map((_, at) => {
      const over = overRound?.[at]
      return over
        ? heightsMm.map((mm, i) => mm + over.overFaceMm(lines![i]!.fromNutMm / lengthMm))
        : heightsMm
    })
  return {
    ...heights,
    reliefMm,
    reliefFrom: givenMm !== undefined ? 'file' : bow && 'bow',
    sinkMm,
    bridgeToBuildMm: strungMm + sinkMm,
    bridgeBuiltMm: strungMm + sinkMm - (heights.bridgeStandsMm ?? 0),
    octaveAfterCreepMm: bow || lid ? octaveMm + (bow?.creepMm ?? 0) - settlesMm / 2 : undefined,
    leastMm: Math.min(nutMm, octaveMm, ...(overRound ? (ofStrings ?? []).flat() : (heightsMm ?? []))),
    atLinesMm: ofStrings,
  }
}

/** Complete three heights of one straight line; `called`, where all are given, is the last by the other two. */
function thirdHeight(
  nut: number | undefined,
  octave: number | undefined,
  bridge: number | undefined,
): {nut: number; octave: number; bridge: number; called?: number} | undefined {
  if (nut !== undefined && octave !== undefined) {
    const called = 2 * octave - nut
    return bridge === undefined ? {nut, octave, bridge: called} : {nut, octave, bridge, called}
  }
  if (bridge === undefined) return undefined
  if (nut !== undefined) return {nut, octave: (nut + bridge) / 2, bridge}
  return octave === undefined ? undefined : {nut: 2 * octave - bridge, octave, bridge}
}

/**
 * Say how far above the playing face (mm; negative: below) the bridge stands: on the neck level with it, or with the
 * neck itself past the end of a fingerboard; on the top as far below as the face stands over the top, which on a neck
 * that leans back grows from the box's edge on.
 */
function bridgeStandsMm(
  {bridge, fingerboard, neck}: BuildValues,
  stationMm: number,
  place: BoxPlace | undefined,
): number | undefined {
  if (bridge?.on?.value !== 'top') {
    const endMm = fingerboard?.to?.mm ?? stationMm
    return endMm < stationMm ? 0 - (fingerboard?.thickness?.mm ?? 0) : 0
  }
  const aboveMm = neck?.['above-top']?.mm
  if (aboveMm === undefined) return undefined
  const leanRad = radians(neck?.angle?.deg ?? 0)
  return 0 - aboveMm - (place ? (stationMm - place.atMm) * Math.tan(leanRad) : 0)
}

/**
 * Give the hollow (mm) of a relieved neck at a distance from the nut (mm), by its deepest: a straight slope to the
 * octave and back towards the bridge, as the model of intonation has it.
 */
export function reliefAtMm(deepestMm: number, fromNutMm: number, scaleMm: number): number {
  return deepestMm * Math.min((2 * fromNutMm) / scaleMm, (2 * (scaleMm - fromNutMm)) / scaleMm)
}

/** Say how high (mm) the string stands above the playing face at the nut: `action.nutMm` is above the crowns. */
export const nutAboveFaceMm = ({nutMm, crownMm}: Pick<Heights, 'nutMm' | 'crownMm'>): number =>
  nutMm + crownMm
