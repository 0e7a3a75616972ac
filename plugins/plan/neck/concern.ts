import type {Settled} from '../part.ts'
import type {Plan} from '../plan.ts'
import type {Cutter} from './cut.ts'
import type {NeckModel} from './model.ts'
import type {Neck} from './neck.ts'

/** One concern of the neck: read the body and what is known so far, and add to the neck's plan. */
export type NeckConcern = (input: {
  model: NeckModel
  /** Cuts that body across, its woods as stiff as they usually are. */
  cut: Cutter
  settled: Settled
  soFar: Plan
  neck: Neck
}) => Partial<Neck>
