import type {Build} from '../../build-file/schema/build.ts'
import type {Proposal} from './proposal.ts'

/** Why something is assumed that no row of usual values has; the words are in the words room. */
export type AssumedWhy = 'weakest kind'

/** A value that the file leaves out, and what it is taken to be. */
export interface Assumption {
  path: string
  /** As a maker would write it; of the weakest kind that a wood's name may mean, its row of the wood table. */
  value: string
  /** As the row of usual values says, or what the words room has a sentence for. */
  why: string
  /** Made to fit this build, not the usual value of the trade. */
  proposed?: true | undefined
}

/** A build with everything assumed that the trade has a usual value for; an assumed value says so (`assumed: true`). */
export interface Settled extends Build {
  assumptions: readonly Assumption[]
  /** What was proposed for it, or why nothing was. */
  proposals: readonly Proposal[]
  units: 'in' | 'mm'
  rulerMm: number
  /** Frequency of A4. */
  referenceHz: number
  /** What the days of the journal add up to. */
  minutes: number
  /** What the journal says was done: the headings of its days, and the tasks that are ticked. */
  told: readonly string[]
}
