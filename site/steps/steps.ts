import {plainLines, splitFrontMatter} from '../../plugins/build-file/reading/front-matter.ts'
import type {Surroundings} from '../../plugins/build-file/schema/build.ts'
import type {JournalSettings} from '../../plugins/build-file/schema/schema.ts'
import type {Effects} from '../../plugins/plan/effects.ts'
import type {Context} from '../../plugins/plan/kit/context.ts'
import type {Relatives} from '../../plugins/sections/section.ts'
import {keyOf} from '../kit/cache.ts'
import type {Picture} from '../kit/picture.ts'
import type {PictureLook} from '../pictures/look.ts'
import type {DownloadParts, Downloads} from './downloads.ts'
import type {Drawn, DrawParts} from './draw-build.ts'
import type {MakeResult, PlanResult, ReadResult} from './results.ts'

/** A build file and what reading it depends on. */
export interface ReadInput {
  slug: string
  text: string
  journal: JournalSettings
}

/** A build that was read, and what planning it depends on besides. */
export interface PlanInput {
  read: ReadResult
  text: string
  surroundings: Surroundings
  context: Context
}

/** A build that was planned, and what its page depends on besides. */
export interface MakeInput {
  planned: PlanResult
  readKey: string
  text: string
  /** The file's path within `builds/`. */
  path: string
  relatives: Relatives
  /** By the names that the file gives them. */
  pictures: ReadonlyMap<string, Picture>
  /** Slugs of the builds with a page that this one links to. */
  published: readonly string[]
  pathPrefix: string
  /** Its page is of a finished instrument, and for whoever looks at it. */
  isForVisitors: boolean
}

/** A build that was copied from another: both files as they are. */
interface CompareInput {
  build: {slug: string; text: string}
  /** With the paths of what was measured on it only to be set right. */
  original: {slug: string; text: string; mended: readonly string[]}
  journal: JournalSettings
}

/**
 * The costly steps from a build file to its page and to what is given away beside it. Each is made of its input alone,
 * so that it can be kept by its key; none throws for anything that a file can hold.
 */
export interface Steps {
  /** `state`, where it is told, stands for the file that the bytes were read from, and for all that is in it. */
  look: (input: {bytes: Uint8Array; state: string | undefined}) => Promise<PictureLook>
  /** What was seen of a file in this state, where that is kept. */
  lookedAt: (state: string) => Promise<PictureLook | undefined>
  read: (input: ReadInput) => Promise<ReadResult>
  plan: (input: PlanInput) => Promise<PlanResult>
  make: (input: MakeInput) => Promise<MakeResult>
  draw: (input: DrawParts) => Promise<Drawn>
  compare: (input: CompareInput) => Promise<Effects>
  give: (input: DownloadParts) => Promise<Downloads>
}

/** The keys of the steps: each stands for its input, and through it for the step before. */
export const lookKey = (hash: string): string => keyOf('look', hash)
export const lookedAtKey = (state: string): string => keyOf('looked at', state)

export const readKey = ({slug, text, journal}: ReadInput): string =>
  keyOf('read', slug, text, JSON.stringify(journal))

export const planKey = ({read, surroundings, context}: PlanInput): string =>
  keyOf('plan', read.key, JSON.stringify([surroundings, context]))

export const makeKey = ({planned, path, relatives, pictures, published, ...where}: MakeInput): string =>
  keyOf(
    'make',
    planned.key,
    path,
    JSON.stringify([relatives, [...pictures], published, where.pathPrefix, where.isForVisitors]),
  )

/** Only the front matter counts, so that who writes on waits for nothing. */
export const compareKey = ({build, original, journal}: CompareInput): string =>
  keyOf(
    'compare',
    ...[original, build].map(({text}) => text.split(/^---[ \t]*\r?$/m)[1] ?? ''),
    JSON.stringify([journal, original.mended]),
  )

/** The prose is nothing that is drawn. */
export const drawKey = ({build, plan, isPictured}: DrawParts): string =>
  keyOf('draw', JSON.stringify([build.values, plan, isPictured]))

/** The prose is nothing that is given away. */
export const downloadsKey = ({build, plan, text, journal}: DownloadParts): string => {
  const {front} = splitFrontMatter(plainLines(text))
  return keyOf('give', build.slug, JSON.stringify([front?.yaml, plan, journal]))
}
