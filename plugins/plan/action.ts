import type {BuildValues} from '../build-file/schema.ts'
import type {PlanPart} from './part.ts'
import {reliefAtMm} from './relief.ts'

/**
 * Put the strings at their heights (mm): at the nut and at half the scale length above the playing face (above the
 * crowns where fretted), at the bridge above the playing face, and at every line. The three lie on one straight line
 * once all are taken from the playing face, so two give the third; where the file gives all three, the bridge that
 * nut and octave call for is told besides. Relief, where given, comes on top.
 */
export const action: PlanPart = ({values}, soFar) => {
  const lengthMm = values.scale?.length?.mm
  if (lengthMm === undefined) return {}
  const crownMm = values.scale?.fretted?.value ? (values.frets?.crown?.mm ?? 0) : 0
  const standsMm = bridgeStandsMm(values, soFar.box?.atMm)
  const ownHeight = values.bridge?.height?.mm
  const three = thirdHeight(
    values.action?.nut && values.action.nut.mm + crownMm,
    values.action?.octave && values.action.octave.mm + crownMm,
    ownHeight !== undefined && standsMm !== undefined ? ownHeight + standsMm : undefined,
  )
  if (!three) return {}
  const nutMm = three.nut - crownMm
  const reliefMm = values.action?.relief?.mm ?? 0
  const heightsMm = soFar.scale?.lines?.map(
    ({fromNutMm}) =>
      nutMm + ((three.bridge - three.nut) * fromNutMm) / lengthMm + reliefAtMm(reliefMm, fromNutMm, lengthMm),
  )
  return {
    action: {
      nutMm,
      octaveMm: three.octave - crownMm,
      bridgeHeightMm: three.bridge,
      crownMm,
      reliefMm,
      leastMm: Math.min(nutMm, three.octave - crownMm, ...(heightsMm ?? [])),
      ...(standsMm !== undefined && {levelHeightMm: Math.max(three.nut, three.octave) - standsMm}),
      ...(standsMm !== undefined && {bridgeStandsMm: standsMm}),
      ...(three.called !== undefined && standsMm !== undefined && {calledHeightMm: three.called - standsMm}),
      ...(heightsMm && values.strings && {atLinesMm: values.strings.map(() => heightsMm)}),
    },
    ...(soFar.bridge &&
      standsMm !== undefined && {bridge: {...soFar.bridge, heightMm: ownHeight ?? three.bridge - standsMm}}),
  }
}

/** Complete three heights of one straight line; `called`, where all are given, is the last by the other two. */
function thirdHeight(nut: number | undefined, octave: number | undefined, bridge: number | undefined) {
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
function bridgeStandsMm(values: BuildValues, boxAtMm: number | undefined): number | undefined {
  const {bridge, fingerboard, neck} = values
  const stationMm = values.scale!.length!.mm
  if (bridge?.on?.value !== 'top') {
    const endMm = fingerboard?.to?.mm ?? stationMm
    return endMm < stationMm ? -(fingerboard?.thickness?.mm ?? 0) : 0
  }
  const aboveMm = neck?.['above-top']?.mm
  if (aboveMm === undefined) return undefined
  const leanRad = ((neck?.angle?.deg ?? 0) * Math.PI) / 180
  return -aboveMm - (boxAtMm === undefined ? 0 : (stationMm - boxAtMm) * Math.tan(leanRad))
}
