import type {BuildValues} from '../../build-file/schema.ts'
import {inch} from '../../tables/units.ts'
import type {BoxPlace} from '../box/box-place.ts'
import {lastLineMm} from '../scale.ts'
import type {NeckModel} from './model.ts'

/** What a fingerboard keeps past its last line (mm): common practice, no source. */
const pastLastLineMm = inch(1 / 4)

/**
 * Say where a fingerboard without an end stops (mm from the nut line): at the box, or past the last line where that is
 * further or there is no box, and always before the bridge's foot. A neck that runs through is cut down at the box, and
 * its board stops there. Undefined without a board, and where neither box nor lines nor bridge tell.
 */
export function boardEndMm(values: BuildValues, place: BoxPlace | undefined): number | undefined {
  const {fingerboard, scale, bridge, neck} = values
  if (!fingerboard) return undefined
  const lastMm = lastLineMm(values)
  const isCutDown = neck?.joins?.value === 'through' && place !== undefined
  const reachMm = Math.max(place?.atMm ?? 0, lastMm === undefined || isCutDown ? 0 : lastMm + pastLastLineMm)
  const footMm = scale?.length && scale.length.mm - (bridge?.foot?.mm ?? 0) / 2
  const endMm = reachMm > 0 ? Math.min(reachMm, footMm ?? reachMm) : footMm
  return endMm !== undefined && endMm > (fingerboard.from?.mm ?? 0) ? endMm : undefined
}

/** A fingerboard that goes on over the box, where a neck that runs through is cut down: its end, and the box's (mm). */
export interface BoardOverBox {
  endMm: number
  edgeMm: number
}

/** Say whether the fingerboard of a neck that runs through would be sawn off where the neck is cut down for the top. */
export function boardOverBox({fingerboard}: BuildValues, {inside}: NeckModel): BoardOverBox | undefined {
  const endMm = fingerboard?.thickness && fingerboard.to?.mm
  const edgeMm = inside?.box[0] ?? 0
  return endMm !== undefined && edgeMm > 0 && endMm > edgeMm + 1e-6 ? {endMm, edgeMm} : undefined
}
