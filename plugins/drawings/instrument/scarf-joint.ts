import type {Plan} from '../../plan/shape/plan.ts'
import {type Point, path, type Shape} from '../kit/shape.ts'
import {headPoint, neckProfile} from './head-side.ts'

/**
 * Find a scarf's glue line from the side: along the neck's sawn-off back, from where the head's back begins to the
 * head's face, since the piece sawn off is turned over and glued under the neck's end. In mm.
 */
export function scarfLine(plan: Plan): [Point, Point] | undefined {
  const {outline, neck} = plan
  const {head, neck: stick} = outline ?? {}
  const faceMm = neck?.scarf?.faceMm
  if (!head || !stick || faceMm === undefined || head.ledgeMm + faceMm > head.lengthMm) return undefined
  const face = headPoint(head, head.ledgeMm + faceMm)
  const bend = neckProfile(plan).find(([x, y]) => Math.abs(x - stick.thicknessMm) < 0.01 && y < stick.tailMm)
  return bend && bend[1] > face[1] ? [[face[0], bend[1]], face] : undefined
}

/** Draw a scarf's glue line from the side. */
export function scarfSide(plan: Plan): Shape[] {
  const line = scarfLine(plan)
  return line ? [path('edge', ...line)] : []
}

/** Draw where a scarf's glue line comes out on the head's face, from the front. In mm. */
export function scarfFront({outline, neck}: Plan): Shape[] {
  const head = outline?.head
  if (!head || !neck?.scarf || head.joint !== 'scarf') return []
  const along = head.ledgeMm + neck.scarf.faceMm
  const half = head.widthMm / 2
  return along < head.lengthMm ? [path('edge', [-half, -along], [half, -along])] : []
}
