import type {BuildValues} from '../../build-file/schema.ts'
import {neckTaper} from '../neck-taper.ts'
import type {NeckTaper} from '../neck-width-at.ts'
import type {Plan} from '../shape/plan.ts'
import {type Change, changesAlong} from './changes-along.ts'
import {type HeadShape, headShape} from './head-shape.ts'
import {type Layup, neckLayers} from './neck-layers.ts'
import {type RoundOver, roundOver} from './round-over.ts'

/** The neck as a body, before anything is computed of it; mm from the nut line and from the playing face. */
export interface NeckModel {
  layup: Layup
  taper: NeckTaper
  tailMm?: number
  boxAtMm?: number
  boxTailMm?: number
  scaleMm?: number
  head?: HeadShape
  roundOver?: RoundOver
  faceRadiusMm?: number
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
  const body: Omit<NeckModel, 'changes'> = {
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
