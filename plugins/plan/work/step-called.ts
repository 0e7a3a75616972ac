import type {WorkStep} from '../../tables/hazards.ts'
import {namesOf} from '../../tables/work-kinds.ts'
import type {StepFacts} from './step-facts.ts'

interface Named {
  id: string
  kind: WorkStep
  facts: StepFacts
}

/** List what `:step[...]` may call a step: its name, its id, and of a finish its kind. */
export const callsOf = ({id, kind, facts}: Named): string[] => [
  namesOf(id, kind).name,
  id,
  ...(facts.of === 'finish' ? [facts.name] : []),
]

/** Find the step that is called so, in whichever letters, apostrophes and blanks. */
export const stepCalled = <Of extends Named>(name: string, steps: readonly Of[]): Of | undefined =>
  steps.find((step) => callsOf(step).some((call) => plain(call) === plain(name)))

const plain = (name: string): string => name.trim().toLowerCase().replaceAll("'", '’').replaceAll(/\s+/g, ' ')
