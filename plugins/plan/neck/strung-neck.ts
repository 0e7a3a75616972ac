import type {Plan} from '../shape/plan.ts'
import {type Bent, bend} from './bend.ts'
import {changesAlong} from './changes-along.ts'
import type {NeckModel} from './neck-model.ts'
import {type Stiffness, sectionAt} from './section-at.ts'

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
 * Bend the neck under the strings between nut and bridge line: at each station the moment is the pull times its height
 * over the neutral axis (N·mm), the curvature that over EI. Past `stiffFromMm` the neck is held straight. Undefined
 * where its stiffness is not known.
 */
export function strungNeck(
  model: NeckModel,
  {tensionN, nutMm, bridgeMm, scaleMm}: Pull,
  {stiffFromMm, stiffness}: {stiffFromMm: number; stiffness: Stiffness},
): Bent | undefined {
  const endMm = Math.min(stiffFromMm, model.tailMm ?? scaleMm, scaleMm)
  let isKnown = true
  const curvature = (stationMm: number) => {
    if (stationMm >= endMm) return 0
    const section = sectionAt(model, stationMm, stiffness)
    if (!section?.eiNmm2 || section.neutralAxisMm === undefined) {
      isKnown = false
      return 0
    }
    const heightMm = nutMm + ((bridgeMm - nutMm) * stationMm) / scaleMm
    return (tensionN * (section.neutralAxisMm + heightMm)) / section.eiNmm2
  }
  const breaks = changesAlong(model).map(({stationMm}) => stationMm)
  const inside = [0, scaleMm / 2, endMm, scaleMm, ...breaks].filter((at) => at >= 0 && at <= scaleMm)
  const bent = bend(curvature, inside)
  return isKnown ? bent : undefined
}
