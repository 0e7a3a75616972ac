import {type RackBuild, type RackContext, type Shelf, seesRack, throughRack} from '../../plugins/plan/rack.ts'
import type {Plan} from '../../plugins/plan/shape/plan.ts'
import {inTurns} from '../work/in-turns.ts'

const noRack: RackContext = {pieces: [], gone: []}

/**
 * Plan builds with the wood that stands on the rack on their day, and say how the rack stands after them all.
 * Those that do not look at the rack are planned first, several at a time; the others wait for those before them.
 */
export async function planOnRack<O extends {build: RackBuild}, P extends {plan: Plan}>(
  rack: Shelf,
  opened: readonly O[],
  plan: (one: O, context: RackContext) => Promise<P>,
): Promise<{planned: P[]; shelf: Shelf}> {
  const planned = await inTurns(opened, async (one) => (seesRack(one.build) ? undefined : plan(one, noRack)))
  const places = new Map(opened.map(({build}, at) => [build, at]))
  const shelf = await throughRack(
    rack,
    opened.map(({build}) => build),
    async (build, context) => {
      const at = places.get(build)!
      planned[at] ??= await plan(opened[at]!, context)
      return planned[at].plan.cuts
    },
  )
  return {planned: planned.map((one) => one!), shelf}
}
