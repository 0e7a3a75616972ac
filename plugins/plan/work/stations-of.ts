import type {Plan} from '../shape/plan.ts'
import type {Step} from '../shape/work.ts'

/** Take the stations of some kinds from the layout, in order: mm from the nut line. */
export function stationsOf({layout = []}: Plan, kinds: readonly string[]): Step['stations'] {
  const found: Step['stations'] = []
  for (const {kind, what, stationMm} of layout) if (kinds.includes(kind)) found.push({what, stationMm})
  return found
}
