import {writeForce} from '../build-file/quantities/write-force.ts'
import type {Plan} from '../plan/shape/plan.ts'
import type {StringPlan} from '../plan/shape/strings.ts'
import type {Finding} from './check.ts'

/**
 * Word what would bring a string to an even pull: gauges that would do at its `gauge`, or, where the packet tells its
 * mass or pull, another packet.
 */
export function stringMend(
  string: StringPlan,
  at: number,
  {units}: Plan,
): Pick<Finding, 'at' | 'expected'> & {does: string} {
  const path = `strings.${at + 1}`
  const gauges = string.alternatives ?? []
  const does =
    gauges.length > 0
      ? gauges.map(({gauge, tensionN}) => `${gauge} would pull ${writeForce(tensionN, units)}`).join(', ')
      : `no common gauge carries ${string.note} here; another note or scale length would`
  const {mend} = string
  if (string.massFrom === 'mass' && mend)
    return {
      at: `${path}.mass`,
      expected: [gramsText(mend.massKgM)],
      does: `${gramsText(mend.massKgM)} is right; ${does}`,
    }
  if (string.massFrom === 'tension' && mend?.packetN !== undefined) {
    const pull = `${mend.packetN.toFixed(0)} N`
    return {
      at: `${path}.tension.pull`,
      expected: [pull],
      does: `a packet that prints ${pull} is right; ${does}`,
    }
  }
  return {at: `${path}.gauge`, does, ...(gauges.length > 0 && {expected: gauges.map(({gauge}) => gauge)})}
}

const gramsText = (kgM: number) => `${(kgM * 1000).toFixed(2)} g/m`

/** Name a string and its gauge as the file writes them: `D4 .013`. */
export function stringCalled({name, gauge}: Pick<StringPlan, 'name' | 'gauge'>): string {
  return gauge ? `${name} ${gauge}` : name
}
