import type {Plan} from '../shape/plan.ts'
import {type Bent, bend, type Curvature} from './bend.ts'
import {distinctPlaces} from './changes-along.ts'
import type {Cutter} from './cut-neck.ts'
import type {NeckModel} from './neck-model.ts'

/** The pull of all strings, and how high they stand above the playing face at nut and bridge line. */
export interface Pull {
  tensionN: number
  nutMm: number
  bridgeMm: number
  scaleMm: number
}

/** Gather the pull; undefined before strings, scale and heights are known. */
export function pullOf({tensionTotalN, action, scale}: Plan): Pull | undefined {
  const scaleMm = scale?.lengthMm
  if (tensionTotalN === undefined || !action || scaleMm === undefined) return undefined
  const nutMm = action.nutMm + (action.crownMm ?? 0)
  return {tensionN: tensionTotalN, nutMm, bridgeMm: action.bridgeHeightMm, scaleMm}
}

/**
 * Give the neck's curvature under the strings at any station: the moment is the pull times its height over the neutral
 * axis (N·mm), the curvature that over EI; not a number where its stiffness is not known.
 */
export function curvatureOf(cut: Cutter, {tensionN, nutMm, bridgeMm, scaleMm}: Pull): Curvature {
  return (stationMm) => {
    const {eiNmm2 = 0, neutralAxisMm = 0} = cut(stationMm)?.values ?? {}
    const heightMm = nutMm + ((bridgeMm - nutMm) * stationMm) / scaleMm
    return eiNmm2 > 0 ? (tensionN * (neutralAxisMm + heightMm)) / eiNmm2 : Number.NaN
  }
}

/**
 * Bend the neck by that curvature between nut and bridge line. Past `stiffFromMm` the neck is held straight. Undefined
 * where its stiffness is not known.
 */
export function strungNeck(
  {tailMm, changes}: NeckModel,
  curvature: Curvature,
  {stiffFromMm, scaleMm}: {stiffFromMm: number; scaleMm: number},
): Bent | undefined {
  const endMm = Math.min(stiffFromMm, tailMm ?? scaleMm, scaleMm)
  const breaks = [0, scaleMm / 2, endMm, scaleMm, ...changes.map(({stationMm}) => stationMm)]
  const bent = bend(
    (stationMm) => (stationMm >= endMm ? 0 : curvature(stationMm)),
    distinctPlaces(breaks.filter((at) => at >= 0 && at <= scaleMm)),
  )
  return Number.isFinite(bent.reliefMm) ? bent : undefined
}
