import type {Build} from '../../plugins/build-file/schema/build.ts'
import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import type {Settled} from '../../plugins/plan/kit/settled.ts'
import type {Plan} from '../../plugins/plan/plan.ts'
import type {Known, KnownPage, Unmade} from '../kit/page.ts'
import type {MadeBuild, SiteBuild} from '../kit/site-data.ts'

/** `key` stands for all that the result comes from: the same key, the same result. */
export interface ReadResult {
  key: string
  build: Build
  problems: Problem[]
}

export interface PlanResult {
  key: string
  /** The build among its surroundings, with everything assumed that it leaves out. */
  build: Settled
  plan: Plan
  /** The reader's problems and those of the checks, in the order of the file. */
  problems: Problem[]
  /** Of an outline: stands for its build and plan, less what the prose alone changes. */
  shown?: string
}

export interface MakeResult extends Omit<MadeBuild, 'hanging'> {
  key: string
}

/** What other pages show of a build, whether for somebody who writes or for all. */
export interface Glance {
  made: Pick<SiteBuild['made'], 'headings' | 'hanging'>
  /** What makers call it by, for the search. */
  called: string
  /** The opening of its drawn cover, which tells its size. */
  cover?: string | undefined
  pages: KnownPage[]
}

/** What was made of a build, in short: all that the rest of the site asks, and what its own pages are called. */
export interface Summary {
  made: Pick<SiteBuild['made'], 'headings' | 'hanging' | 'words'>
  /** The opening of its drawn cover, which tells its size. */
  cover: string | undefined
  faults: SiteBuild['problems']
  pages: KnownPage[]
  files: Known[]
  /** Pages that this program fails to make. */
  unmade: Unmade[]
  /** Keys of what is kept that its pages and files are made from. */
  from: string[]
}

/** A build as its relatives and whoever looks for its page know it. */
export interface Listed {
  slug: string
  /** As people name it: `builds/needle-box.md`. */
  file: string
  title: string
  /** The slug of what it was copied from. */
  basedOn?: string | undefined
  /** The key of what stands on the rack for it, where it looks at the rack. */
  rack?: string | undefined
}
