import type {Settled} from '../part.ts'
import type {Fastener} from '../shape/holes.ts'
import type {Plan} from '../shape/plan.ts'
import {jointPull} from './joint-pull.ts'
import {endScrewLoads, type Seat, screwLoads, throughScrewLoads} from './screw-loads.ts'

/**
 * Give what the strings ask of each screw (N), those across the neck's seat and those along the neck apart; nothing of
 * a screw that does not join the neck, and undefined where the strings' pull on the neck is not known.
 */
export function jointLoads(
  fasteners: readonly Fastener[],
  {values}: Settled,
  plan: Plan,
): (number | undefined)[] {
  const {box} = plan
  const pull = jointPull(values, plan)
  const loads: (number | undefined)[] = fasteners.map(({joinsNeck}) => (joinsNeck ? undefined : 0))
  if (!pull || box?.atMm === undefined || box.tailMm === undefined || !box.neck) return loads
  const seat: Seat = {
    fromMm: box.atMm,
    toMm: Math.min(box.neck.tailMm ?? box.tailMm, box.tailMm),
    belowFaceMm: box.neck.thicknessMm,
  }
  for (const isAlong of [false, true]) {
    const which = fasteners.flatMap((one, i) =>
      one.joinsNeck && (one.way === 'along') === isAlong ? [i] : [],
    )
    if (!which.length) continue
    const stations = which.map((i) => fasteners[i]!.stationMm)
    const shares = isAlong
      ? endScrewLoads(which.length, pull, seat)
      : box.neck.joins === 'through'
        ? throughScrewLoads(which.length, pull)
        : screwLoads(stations, pull, seat)
    for (const [k, i] of which.entries()) loads[i] = shares[k]
  }
  return loads
}
