import type {Plan} from '../../plan/shape/plan.ts'
import type {Step} from '../../plan/shape/work.ts'
import {type Inline, lengthAlone} from '../kit.ts'

type Station = Step['stations'][number]

/** Say where a step is done, from the nut line: `line 1 at 1 3/8 in; line 2 at 2 21/32 in`. */
export function stationsInWords(stations: readonly Station[], plan: Plan): Inline[] {
  return stations.flatMap((station, at): Inline[] => [
    `${at > 0 ? '; ' : ''}${station.what} at `,
    lengthAlone(station.stationMm, plan),
    ...(station.offMm ? [', ', lengthAlone(station.offMm, plan), ' off centre'] : []),
    ...(station.depthMm === undefined ? [] : [', ', lengthAlone(station.depthMm, plan, 'down'), ' deep']),
  ])
}
