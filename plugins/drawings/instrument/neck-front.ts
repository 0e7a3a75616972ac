import type {Outline} from '../../plan/shape/outline.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {type Point, path, type Shape} from '../kit/shape.ts'
import {neckRuns} from './neck-runs.ts'
import {neckWidth} from './neck-width.ts'

/**
 * Draw the edges of neck and head from the front, the head laid flat along its own face: mm across the centre line and
 * down from the nut line. Drawn alike for either hand.
 */
export function neckFront(plan: Plan): Shape[] {
  const {outline} = plan
  const neck = outline?.neck
  if (!neck) return []
  const runs = neckRuns(plan)
  const half = (station: number) => neckWidth(neck, station) / 2
  const edges = runs.flatMap(({fromMm, toMm, seen}) =>
    [-1, 1].map((side) =>
      path(seen ? 'outline' : 'hidden', [side * half(fromMm), fromMm], [side * half(toMm), toMm]),
    ),
  )
  const across = (ink: 'outline' | 'hidden' | 'edge', station: number) =>
    path(ink, [-half(station), station], [half(station), station])
  const last = runs.at(-1)
  const board = neck.fingerboard
  return [
    ...edges,
    ...(last && !neck.isOpen ? [across(last.seen ? 'outline' : 'hidden', last.toMm)] : []),
    ...(board && board.toMm < neck.tailMm
      ? [across(neck.joins === 'through' ? 'outline' : 'edge', board.toMm)]
      : []),
    ...headFront(outline),
  ]
}

/** Draw the head's edges, open towards the neck, and the line where its face leaves the playing face. In mm. */
export function headFront({neck, head}: Outline): Shape[] {
  if (!neck) return []
  const half = neck.nutWidthMm / 2
  if (!head) return [path('outline', [-half, 0], [half, 0])]
  const wide = head.widthMm / 2
  const edge: Point[] = [
    [-wide, 0],
    [-wide, -head.lengthMm],
    [wide, -head.lengthMm],
    [wide, 0],
  ]
  const {ledgeMm} = head
  const isStepped = ledgeMm > 0 && (head.angleDeg > 0 || head.stepMm > 0)
  return [path('outline', ...edge), ...(isStepped ? [path('edge', [-wide, -ledgeMm], [wide, -ledgeMm])] : [])]
}
