import {isAnchoredOnNeck} from '../fasteners/joint-pull.ts'
import type {Settled} from '../part.ts'
import type {Hole} from '../shape/holes.ts'
import type {Plan} from '../shape/plan.ts'

/** A ferrule's usual depth, and what must stay above it for the string hole alone (mm): common practice, no source. */
const ferruleMm = (25.4 * 3) / 8
const aboveFerruleMm = 25.4 / 4

/**
 * List what is drilled for the anchors: a string hole each, opened from the back for a ferrule's body, one hole for a
 * pin. A tailpiece is drilled for by its own screws.
 */
export function anchorHoles({values}: Settled, plan: Plan): Hole[] {
  const {anchors = [], box} = plan
  const kind = values.anchors?.kind?.value
  if (kind === undefined || kind === 'tailpiece') return []
  const stringHoleMm = values.anchors?.['string-hole']?.mm
  const bodyMm = values.anchors?.body?.mm
  const thicknessMm = values.neck?.thickness?.mm
  const isOnNeck = isAnchoredOnNeck(values, plan)
  return anchors.flatMap(({name, stationMm, offMm}): Hole[] => {
    const who = name ? `, ${name}` : ''
    const isInTail =
      !isOnNeck && box?.tailMm !== undefined && stationMm >= box.tailMm - (box.outside?.sidesMm ?? 0)
    const onNeck = kind === 'ferrule' ? 'neck back' : 'playing face'
    const face = isOnNeck ? onNeck : isInTail ? 'tail end' : 'top'
    const place = {stationMm, offMm, of: 'anchors'}
    const diameterMm = kind === 'pins' ? (bodyMm ?? stringHoleMm) : stringHoleMm
    const through: Hole[] =
      diameterMm === undefined
        ? []
        : [
            {
              what: kind === 'pins' ? `pin${who}` : `string hole${who}`,
              face,
              ...place,
              diameterMm,
              backing: 'scrap under the far side',
            },
          ]
    if (kind !== 'ferrule' || bodyMm === undefined || !isOnNeck || thicknessMm === undefined) return through
    const depthMm = Math.min(ferruleMm, thicknessMm - aboveFerruleMm)
    return depthMm <= 0
      ? through
      : [...through, {what: `ferrule${who}`, face: 'neck back', ...place, diameterMm: bodyMm, depthMm}]
  })
}
