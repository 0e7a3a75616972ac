import {type HazardName, hazards} from '../tables/hazards.ts'
import {type BenchFacts, benchFacts, type Trigger} from './cautions/bench-facts.ts'
import {finishCautions, hardwareCautions} from './cautions/hardware-cautions.ts'
import {machineCautions} from './cautions/machine-cautions.ts'
import {woodCautions} from './cautions/wood-cautions.ts'
import type {Settled} from './settle.ts'

export interface Caution {
  id: string
  hazard: string
  because: string
  does: string
  source: string
}

/** What brings each hazard to a build. */
const triggers: Record<HazardName, Trigger> = {
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
  const found: Caution[] = []
  for (const id of names) {
    const because = triggers[id](facts)
    if (because === undefined) continue
    const {hazard, does, source} = hazards[id]
    found.push({id, hazard, because, does, source})
  }
  const own = (settled.values.cautions ?? []).map(
    ({value}, i): Caution => ({
      id: `own-${i + 1}`,
      hazard: 'A caution of this build’s own.',
      because: 'The maker wrote it into the file.',
      does: value,
      source: 'the build file',
    }),
  )
  const all = [...found, ...own]
  return all.length > 0 ? all : undefined
}
