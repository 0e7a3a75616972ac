import type {Plan} from '../../plan/shape/plan.ts'
import {loop, type Point, path, type Shape} from '../kit/shape.ts'
import {neckProfile} from './head-side.ts'
import {placedBox} from './placed-box.ts'

/** Draw neck and head from the side, dashed where the box hides them: outline, fingerboard, edge of the round-over. */
export function neckSide(plan: Plan): Shape[] {
  const neck = plan.outline?.neck
  if (!neck) return []
  const {fingerboard: board, roundOver, thicknessMm, aboveTopMm = 0, tailMm} = neck
  const box = placedBox(plan)
  const isWithin = ([x, y]: Point) =>
    box !== undefined && y > box.atMm && y < box.tailMm && x > aboveTopMm && x < aboveTopMm + box.depthMm
  const profile = neckProfile(plan)
  const isClearOfBox = !box || neck.joins === 'end' || neck.tiltDeg !== 0 || aboveTopMm >= thicknessMm - 0.01
  const shapes: Shape[] = isClearOfBox
    ? [loop('outline', ...profile)]
    : profile.flatMap((from, i) =>
        partly(from, profile[(i + 1) % profile.length]!, [box.atMm, box.tailMm], isWithin),
      )
  if (board) {
    const x = board.thicknessMm
    shapes.push(path('edge', [x, Math.max(0, board.fromMm)], [x, Math.min(tailMm, board.toMm)]))
  }
  if (roundOver && roundOver.radiusMm < thicknessMm) {
    const x = thicknessMm - roundOver.radiusMm
    shapes.push(path('edge', [x, roundOver.fromMm], [x, roundOver.toMm]))
  }
  return shapes
}

/** Draw an edge in parts, cut where it passes the given places along the neck: hidden ones dashed. */
function partly(
  from: Point,
  to: Point,
  cutsMm: readonly number[],
  isHidden: (point: Point) => boolean,
): Shape[] {
  const at = (t: number): Point => [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])]
  const cuts = [0, ...cutsMm.map((mm) => (mm - from[1]) / (to[1] - from[1])), 1]
    .filter((t) => t >= 0 && t <= 1)
    .sort((a, b) => a - b)
  return cuts.slice(1).flatMap((t, i) => {
    const start = cuts[i]!
    return t > start ? [path(isHidden(at((start + t) / 2)) ? 'hidden' : 'outline', at(start), at(t))] : []
  })
}
