import type {BuildValues} from '../../build-file/schema.ts'
import {neckTaper} from '../neck-taper.ts'
import type {Plan} from '../shape/plan.ts'
import {type Change, changesAlong} from './changes-along.ts'
import {headShape} from './head-shape.ts'
import type {NeckBody} from './neck-body.ts'
import {neckLayers} from './neck-layers.ts'
import {roundOver} from './round-over.ts'

/** The neck's body, before anything is computed of it. */
export interface NeckModel extends NeckBody {
  /** Where its section is worth knowing, from the nut line on. */
  changes: readonly Change[]
}

/** Gather the neck's body from the build and from where box and tail end lie; undefined without width and thickness. */
export function neckModel(
  values: BuildValues,
  {box, neck}: Pick<Plan, 'box' | 'neck'>,
): NeckModel | undefined {
  const headMm = values.head?.length?.mm
  const lengthMm = neck?.budget?.lengthMm ?? values.neck?.length?.mm
  const tailMm = lengthMm !== undefined && headMm !== undefined ? Math.max(lengthMm - headMm, 0) : undefined
  const scaleMm = values.scale?.length?.mm
  const layup = neckLayers(values, (box?.atMm ?? scaleMm ?? 0) / 2)
  const taper = neckTaper(values)
  if (!layup || !taper) return undefined
  const head = headShape(values, layup)
  const rounded = roundOver(values, {head, boxAtMm: box?.atMm, tailMm})
  const radius = values.fingerboard?.radius?.mm
  const body: NeckBody = {
    layup,
    taper: {...taper, ...(tailMm && {tailStationMm: tailMm})},
  }
  if (tailMm !== undefined) body.tailMm = tailMm
  if (box?.atMm !== undefined) body.boxAtMm = box.atMm
  if (box?.tailMm !== undefined) body.boxTailMm = box.tailMm
  if (scaleMm !== undefined) body.scaleMm = scaleMm
  if (head) body.head = head
  if (rounded) body.roundOver = rounded
  if (radius !== undefined) body.faceRadiusMm = radius
  return {...body, changes: changesAlong(body)}
}
