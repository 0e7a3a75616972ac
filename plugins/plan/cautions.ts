import {type HazardName, hazards} from '../tables/hazards.ts'
import {type BenchFacts, type Brought, benchFacts, type Trigger} from './cautions/bench-facts.ts'
import {finishCautions, hardwareCautions} from './cautions/hardware-cautions.ts'
import {machineCautions} from './cautions/machine-cautions.ts'
import {woodCautions} from './cautions/wood-cautions.ts'
import type {Settled} from './settled.ts'

/** A hazard of the table and what brings it here, or a caution of the maker's own. */
export type Caution = {id: HazardName; here: Brought[HazardName]} | {id: `own-${number}`; does: string}

/** What brings each hazard to a build. */
const triggers: {[Name in HazardName]: Trigger<Name>} = {
  ...machineCautions,
  ...hardwareCautions,
  ...finishCautions,
  ...woodCautions,
}

const names = Object.keys(hazards) as HazardName[]

/**
 * List what can happen while this build is made, the worst first as in the table of hazards, with what brings it
 * here, then the build's own cautions. Undefined while there is nothing to work on.
 */
export function planCautions(settled: Settled, made: BenchFacts['made']): Caution[] | undefined {
  const facts = benchFacts(settled, made)
  const all: Caution[] = []
  for (const id of names) {
    const here = triggers[id](facts)
    if (here) all.push({id, here})
  }
  for (const [i, {value}] of (settled.values.cautions ?? []).entries())
    all.push({id: `own-${i + 1}`, does: value})
  return all.length > 0 ? all : undefined
}
