import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {BuildValues} from '../../build-file/schema.ts'
import type {Settled} from '../part.ts'
import type {Plan} from '../shape/plan.ts'
import {type WoodUsed, woodsUsed} from './woods-used.ts'

/** What decides which cautions a build brings: its values, its plan so far, and what is asked of both often. */
export interface BenchFacts {
  values: BuildValues
  plan: Plan
  woods: readonly WoodUsed[]
  /** Write a length (mm) in the build's units to its ruler. */
  size: (mm: number) => string
}

/** Say why a hazard belongs to this build, in one sentence; undefined where it does not. */
export type Trigger = (facts: BenchFacts) => string | undefined

/** Gather what the triggers of cautions ask. */
export function benchFacts(settled: Settled, plan: Plan): BenchFacts {
  return {
    values: settled.values,
    plan,
    woods: woodsUsed(settled.values),
    size: (mm) => writeLength(mm, settled),
  }
}
