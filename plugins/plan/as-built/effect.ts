import type {Plan} from '../shape/plan.ts'
import type {Measure} from './measure.ts'

/** A measure that has something to be compared with. */
export type Compared = Required<Measure> & {difference: number}

export interface EffectContext {
  plan: Plan
  referenceHz: number
  /** From nut to bridge as it was built. */
  lengthMm: number | undefined
}

/** Say what a difference does, a sentence each. */
export type Effect = (measure: Compared, context: EffectContext) => string[]
