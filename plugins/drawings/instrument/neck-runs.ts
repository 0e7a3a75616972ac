import type {Plan} from '../../plan/shape/plan.ts'
import {placedBox} from './placed-box.ts'

/** A stretch along the neck, in mm from the nut, and whether its edges are seen from the front. */
export interface Run {
  fromMm: number
  toMm: number
  seen: boolean
}

/**
 * Part the neck, from the nut line to its end, into what is seen from the front and what the box's top hides.
 * A neck on top is seen all along; one that runs through is hidden within the box but for its fingerboard.
 */
export function neckRuns(plan: Plan): Run[] {
  const neck = plan.outline?.neck
  const box = placedBox(plan)
  if (!neck) return []
  if (!box || neck.joins !== 'through') return [{fromMm: 0, toMm: neck.tailMm, seen: true}]
  const board = neck.fingerboard
  const hideFromMm = board ? Math.max(box.atMm, Math.min(board.toMm, box.tailMm)) : box.atMm
  const cuts = [
    {fromMm: 0, toMm: hideFromMm, seen: true},
    {fromMm: hideFromMm, toMm: Math.min(neck.tailMm, box.tailMm), seen: false},
    {fromMm: box.tailMm, toMm: neck.tailMm, seen: true},
  ]
  return cuts.filter(({fromMm, toMm}) => toMm > fromMm)
}
