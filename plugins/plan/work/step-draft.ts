import type {WorkStep} from '../../tables/hazards.ts'
import type {Step} from '../shape/work.ts'
import type {WorkFacts} from './work-facts.ts'

/** A step before it has its place in the order: `after` may name steps that this build does not have. */
export interface StepDraft {
  id: string
  kind: WorkStep
  /** Where the kind's own name would not do. */
  step?: string
  does: string
  tool: string
  setting?: string | undefined
  stations?: Step['stations']
  waitH?: number
  after: readonly string[]
  check?: string | undefined
  /** How a day's heading or a task names it, where not as its kind. */
  words?: readonly string[]
}

/** Say what one group of the work asks of this build; in the order in which it would be done if nothing forbade it. */
export type WorkGroup = (facts: WorkFacts) => StepDraft[]
