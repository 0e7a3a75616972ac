import {screws as screwRows} from '../../tables/screws.ts'
import type {PlanPart} from '../part.ts'
import {jointLoads} from './joint-loads.ts'
import {type ScrewPlan, screwPlan} from './screw-plan.ts'
import {screwSize} from './screw-size.ts'
import {withdrawalN} from './withdrawal.ts'

/**
 * Work out each screw, in the file's order, the grid spread out: bits, wood under the head, thread, how far its tip
 * stays from the far face, what it holds and what the strings ask of it. Lengths in mm, forces in N. A screw that the
 * file does not say enough about is left out.
 */
export const fasteners: PlanPart = (settled, soFar) => {
  const worked = (soFar.screws ?? []).flatMap((place) => screwPlan(place, settled, soFar) ?? [])
  if (!worked.length) return {}
  const loads = jointLoads(
    worked.map(({fastener}) => fastener),
    settled,
    soFar,
  )
  return {
    fasteners: worked.map((screw, i) => {
      const loadN = loads[i]
      return {...screw.fastener, ...(loadN !== undefined && {loadN, ...gaugeFor(loadN, screw)})}
    }),
  }
}

/** The smallest gauge of the table that holds three times the load, where this one does not. */
function gaugeFor(loadN: number, {fastener, bites, isEndGrain}: ScrewPlan) {
  if (loadN * 3 <= fastener.withdrawalN) return {}
  const larger = screwRows.find(
    ({gauge}) =>
      gauge > fastener.size && withdrawalN(screwSize(gauge).shankMm, bites, isEndGrain) >= loadN * 3,
  )
  return larger ? {sizeForLoad: larger.gauge} : {}
}
