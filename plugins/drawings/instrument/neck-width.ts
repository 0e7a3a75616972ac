import {neckWidthAt} from '../../plan/neck-width-at.ts'
import type {NeckOutline} from '../../plan/shape/outline.ts'

/** Give the width of a neck's outline at a distance from the nut line, in mm. */
export function neckWidth({nutWidthMm, tailWidthMm, tailMm}: NeckOutline, stationMm: number): number {
  return neckWidthAt(stationMm, {nutMm: nutWidthMm, tailMm: tailWidthMm, tailStationMm: tailMm}) ?? nutWidthMm
}
