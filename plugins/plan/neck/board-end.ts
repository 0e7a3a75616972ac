import type {BuildValues} from '../../build-file/schema.ts'
import {inch} from '../../tables/units.ts'
import type {BoxPlace} from '../box/box-place.ts'
import {lastLineMm} from '../scale.ts'

/** What a fingerboard keeps past its last line (mm): common practice, no source. */
const pastLastLineMm = inch(1 / 4)

/**
 * Say where a fingerboard without an end stops (mm from the nut line): at the box, or past the last line where that is
 * further or there is no box, and always before the bridge's foot. Undefined without a board, and where
 * neither box nor lines nor bridge tell.
 */
export function boardEndMm(values: BuildValues, place: BoxPlace | undefined): number | undefined {
  const {fingerboard, scale, bridge} = values
  if (!fingerboard) return undefined
  const lastMm = lastLineMm(values)
  const reachMm = Math.max(place?.atMm ?? 0, lastMm === undefined ? 0 : lastMm + pastLastLineMm)
  const footMm = scale?.length && scale.length.mm - (bridge?.foot?.mm ?? 0) / 2
  const endMm = reachMm > 0 ? Math.min(reachMm, footMm ?? reachMm) : footMm
  return endMm !== undefined && endMm > (fingerboard.from?.mm ?? 0) ? endMm : undefined
}
