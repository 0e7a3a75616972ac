import type {Plan} from '../../plan/shape/plan.ts'
import {circle, path, type Shape} from '../kit/shape.ts'
import type {Hand} from './hand.ts'
import {neckWidth} from './neck-width.ts'
import {placedBox} from './placed-box.ts'

/** Draw the box's outline from the front, broken where the neck lies over its edges, and its sound holes. In mm. */
export function boxFront(plan: Plan, hand: Hand): Shape[] {
  const box = placedBox(plan)
  if (!box) return []
  const wide = box.widthMm / 2
  return [
    path('outline', [-wide, box.atMm], [-wide, box.tailMm]),
    path('outline', [wide, box.atMm], [wide, box.tailMm]),
    ...boxEnd(plan, wide, box.atMm),
    ...boxEnd(plan, wide, box.tailMm),
    ...soundHolesFront(plan, hand),
  ]
}

export function soundHolesFront({box}: Plan, hand: Hand): Shape[] {
  return (box?.soundHoles ?? []).map(({stationMm, offMm, diameterMm}) =>
    circle('outline', [hand.x(offMm), stationMm], diameterMm / 2),
  )
}

/** Draw an end of the box: whole, or hidden where the neck or its fingerboard lies over it. */
function boxEnd({outline}: Plan, wide: number, station: number): Shape[] {
  const whole = [path('outline', [-wide, station], [wide, station])]
  const neck = outline?.neck
  if (!neck || neck.joins === 'end') return whole
  const overToMm =
    neck.joins === 'on top' ? neck.tailMm : (neck.fingerboard?.toMm ?? Number.NEGATIVE_INFINITY)
  if (overToMm < station) return whole
  const half = neckWidth(neck, station) / 2
  return [
    path('outline', [-wide, station], [-half, station]),
    path('hidden', [-half, station], [half, station]),
    path('outline', [half, station], [wide, station]),
  ]
}
