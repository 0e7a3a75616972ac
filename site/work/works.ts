import type {Build, Surroundings} from '../../plugins/build-file/build.ts'
import type {Problem} from '../../plugins/build-file/problem.ts'
import type {JournalSettings} from '../../plugins/build-file/schema.ts'
import type {GonePiece, Piece} from '../../plugins/plan/part.ts'
import type {Plan} from '../../plugins/plan/shape/plan.ts'
import type {Relatives} from '../../plugins/sections/section.ts'
import type {TakeAwayInput, TakeAways} from '../make/take-aways.ts'
import type {Picture} from '../pictures/picture.ts'
import type {MadeBuild} from '../site-data.ts'

/** A build file and what reading it depends on. */
export interface ReadInput {
  slug: string
  text: string
  journal: JournalSettings
}

/** `key` stands for all that the result comes from: the same key, the same result. */
export interface ReadWork {
  key: string
  build: Build
  problems: Problem[]
}

/** A build that was read, and what planning it depends on besides. */
export interface PlanInput {
  read: ReadWork
  surroundings: Surroundings
  journal: JournalSettings
  pieces: readonly Piece[]
  gone: readonly GonePiece[]
}

export interface PlanWork {
  key: string
  plan: Plan
  /** The reader's problems and those of the checks, in the order of the file. */
  problems: Problem[]
}

/** A build that was planned, and what its page depends on besides. */
export interface MakeInput {
  /** The build among its surroundings. */
  build: Build
  planned: PlanWork
  readKey: string
  text: string
  /** The file's path within `builds/`. */
  path: string
  relatives: Relatives
  pictures: Readonly<Record<string, Picture>>
  /** Slugs of the builds with a page that this one links to. */
  published: readonly string[]
  pathPrefix: string
}

export interface MakeWork extends MadeBuild {
  key: string
}

/** A build that was planned, and what the files that it gives away depend on besides. */
export interface GiveInput extends TakeAwayInput {
  /** The key of its plan. */
  planKey: string
}

/**
 * The costly steps from a build file to its page and to what is given away beside it. Each is made of its input alone, so that it can be kept
 * by its key or done by another worker; none throws for anything that a file can hold.
 */
export interface Works {
  read: (input: ReadInput) => Promise<ReadWork>
  plan: (input: PlanInput) => Promise<PlanWork>
  make: (input: MakeInput) => Promise<MakeWork>
  give: (input: GiveInput) => Promise<TakeAways>
}
