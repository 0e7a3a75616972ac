import type {RootContent} from 'mdast'
import type {Problem} from '../build-file/schema/problem.ts'
import type {Change} from '../plan/changes.ts'
import type {Settled} from '../plan/kit/settled.ts'
import type {Plan} from '../plan/plan.ts'
import type {SectionName} from '../tables/section-names.ts'

/** The builds that this one is kin to; known only where the whole journal is. */
export interface Relatives {
  /** The build it was copied from, and what was changed. */
  original?: {slug: string; title: string; changes: readonly Change[]}
  copies: readonly {slug: string; title: string}[]
}

export interface SectionInput {
  plan: Plan
  build: Settled
  problems: readonly Problem[]
  relatives?: Relatives | undefined
  /** Whether the page has a section, to link to it; all of them where this is not said. */
  isOnPage?: ((name: SectionName) => boolean) | undefined
  /** From the directive: `view` of `::drawing{view=top}`. */
  attributes: Readonly<Record<string, string>>
}

/** A computed section: it words the plan for a maker and computes nothing. */
export interface Section {
  name: SectionName
  /** The heading on the page, in a maker's words. */
  title: string
  /** Left out in silence, not listed as open, where it has nothing to show and the file does not place it. */
  quiet?: true
  /** Keys of the build file that would bring this section, where it has nothing to show; else empty. */
  needs: (input: SectionInput) => string[]
  /** The content below the heading. */
  content: (input: SectionInput) => RootContent[]
}
