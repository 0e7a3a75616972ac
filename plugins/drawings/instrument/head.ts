import type {HeadOutline} from '../../plan/outline.ts'
import {across, path, type Shape} from '../kit/shapes.ts'
import type {Instrument} from './instrument.ts'

/** Draw the head's edges, open towards the neck, and the line where its face leaves the playing face. In mm. */
export function headFront({neck, head}: Instrument): Shape[] {
  if (!neck) return []
  if (!head) return [across('outline', neck.nutWidthMm / 2, 0)]
  const wide = head.widthMm / 2
  const edge = path('outline', [-wide, 0], [-wide, -head.lengthMm], [wide, -head.lengthMm], [wide, 0])
  return isStepped(head) ? [edge, across('edge', wide, -head.ledgeMm)] : [edge]
}

/** Say whether the head's face leaves the playing face at a line behind the nut. */
export const isStepped = ({ledgeMm, angleDeg, stepMm}: HeadOutline): boolean =>
  ledgeMm > 0 && (angleDeg > 0 || stepMm > 0)

/** Find how far from the nut line a scarf's glue line comes out on the head's face, along it (mm), where it does. */
export function scarfOnFaceMm({head, plan}: Instrument): number | undefined {
  const faceMm = plan.neck?.scarf?.faceMm
  if (!head || faceMm === undefined) return undefined
  const alongMm = head.ledgeMm + faceMm
  return alongMm < head.lengthMm ? alongMm : undefined
}

/** Draw where a scarf's glue line comes out on the head's face, from the front. In mm. */
export function scarfFront(instrument: Instrument): Shape[] {
  const {head} = instrument
  const alongMm = scarfOnFaceMm(instrument)
  return head?.joint === 'scarf' && alongMm !== undefined ? [across('edge', head.widthMm / 2, -alongMm)] : []
}
