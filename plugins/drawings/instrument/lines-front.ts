import type {Plan} from '../../plan/shape/plan.ts'
import {circle, path, type Shape} from '../kit/shape.ts'
import type {Hand} from './hand.ts'
import {neckWidth} from './neck-width.ts'

const dotRadiusMm = 1.2

/** Draw frets or marker lines across the neck, and the dots beside the player's edge. In mm. */
export function linesFront({scale, outline}: Plan, hand: Hand): Shape[] {
  const neck = outline?.neck
  if (!neck) return []
  const lines = (scale?.lines ?? []).map(({fromNutMm, widthMm}) => {
    const half = (widthMm ?? neckWidth(neck, fromNutMm)) / 2
    return path('edge', [-half, fromNutMm], [half, fromNutMm])
  })
  const dots = (scale?.dots ?? []).flatMap(({stationMm, count, side}) => {
    const edge =
      (side === 'bass' ? hand.bass : -hand.bass) * (neckWidth(neck, stationMm) / 2 - 2 * dotRadiusMm)
    return Array.from({length: count}, (_, i) =>
      circle('dot', [edge, stationMm + (i - (count - 1) / 2) * 3 * dotRadiusMm], dotRadiusMm),
    )
  })
  return [...lines, ...dots]
}
