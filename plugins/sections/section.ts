import type {RootContent} from 'mdast'
import type {Build} from '../build-file/build.ts'
import type {Problem} from '../build-file/problem.ts'
import type {Plan} from '../plan/shape/plan.ts'
import type {SectionName} from './names.ts'

export interface SectionInput {
  plan: Plan
  build: Build
  problems: readonly Problem[]
  /** From the directive: `view` of `::drawing{view=top}`. */
  attributes: Readonly<Record<string, string>>
}

/** A computed section: it words the plan for a maker and computes nothing. */
export interface Section {
  name: SectionName
  /** The heading on the page, in a maker's words. */
  title: string
  /** Keys of the build file that would bring this section, where it has nothing to show; else empty. */
  needs: (input: SectionInput) => string[]
  /** The content below the heading. */
  content: (input: SectionInput) => RootContent[]
}
