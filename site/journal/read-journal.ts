import {basename, dirname, join} from 'node:path'
import pMap from 'p-map'
import type {Surroundings} from '../../plugins/build-file/schema/build.ts'
import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import type {JournalSettings} from '../../plugins/build-file/schema/schema.ts'
import type {RackEntry} from '../../plugins/build-file/schema/wood.ts'
import type {RuleName} from '../../plugins/checks/all.ts'
import type {Settled} from '../../plugins/plan/kit/settled.ts'
import type {Plan} from '../../plugins/plan/plan.ts'
import {
  leftBy,
  namedBy,
  noRack,
  onlyReserves,
  type Rack,
  type RackBuild,
  type RackContext,
  rackOf,
  seesRack,
  throughRack,
} from '../../plugins/plan/stock/rack.ts'
import {keyOf} from '../kit/cache.ts'
import {programFails} from '../steps/program-fails.ts'
import type {ReadResult} from '../steps/results.ts'
import type {PlanInput, Steps} from '../steps/steps.ts'
import {folderLists, hasOwnFolder, together} from './folder.ts'
import {type BuildFile, listBuilds, type NoBuild} from './list-builds.ts'
import {type LookedAt, lookAtFiles} from './look-at-files.ts'
import {notRead, readSettings, readText} from './settings.ts'
import {relevant} from './surroundings.ts'

/** A build, planned and checked; `problems` are all that were found, in the order of the file. */
export interface PlannedBuild extends OpenBuild {
  build: Settled
  plan: Plan
  /** The files of its folder that it names. */
  looked: LookedAt
  /** What stands on the rack for it. */
  rack: RackContext
  /** What it was planned from. */
  input: PlanInput
  /** Of an outline: stands for its build and plan, less what the prose alone changes. */
  shown?: string
}

export interface Journal {
  settings: JournalSettings
  rack: RackEntry[]
  /** The rack as it stands after all builds. */
  rackLeft: Rack
  builds: PlannedBuild[]
  /** Problems of `journal.yaml` and `rack.yaml`. */
  problems: {file: string; problems: Problem[]}[]
  /** Markdown files that are no build, and why. */
  others: NoBuild[]
  /**
   * Read and plan one of the builds (its slug) again, all else as it was; undefined where its file is not there, or where
   * it is copied from another now, or looks at the rack as it did not.
   */
  again: (slug: string) => Promise<JournalAgain | undefined>
}

/** A journal in which one build was planned again. */
interface JournalAgain {
  journal: Journal
  one: PlannedBuild
  /** What it asks of the rack and leaves there is as it was too: no other build's plan changes. */
  isWhole: boolean
}

/** The steps as far as a journal is read, planned and checked. */
export type ReadingSteps = Pick<Steps, 'look' | 'lookedAt' | 'read' | 'plan'>

/** Read, plan and check every build of the journal at `root` (the folder that holds `builds/`). */
export async function readJournalFolder(root: string, steps: ReadingSteps): Promise<Journal> {
  const {settings, rack, problems} = await readSettings(join(root, 'builds'))
  const {builds: found, others} = await listBuilds(root)
  const opened = await pMap(found, (each) => openBuild(each, settings, steps), together)
  const lists = folderLists(found)
  const names = opened.map(nameOf)
  const start = rackOf(rack)
  const plan = async (each: OpenBuild, context: RackContext, filesOf = lists) =>
    planOpened(each, {files: await filesOf(each), builds: names}, {settings, ...context}, steps)
  const {planned, rackLeft} = await planOnRack(start, opened, plan)
  const sees = seesRack(start)
  const again = async (before: PlannedBuild) => {
    const {slug, file, path, folder, twice} = before
    const now = await openBuild({slug, file, path, folder, ...(twice && {twice})}, settings, steps)
    const isAlike = ({build}: OpenBuild) => JSON.stringify([build.values['based-on']?.value, sees(build)])
    if (now.text === '' || isAlike(now) !== isAlike(before)) return undefined
    return plan(now, before.rack, hasOwnFolder(now) ? folderLists([now]) : lists)
  }
  const whole = (builds: PlannedBuild[]): Journal => ({
    settings,
    rack,
    rackLeft,
    builds,
    others,
    problems: problems.map((each) => ({...each, file: `builds/${each.file}`})),
    again: async (slug) => {
      const at = builds.findIndex((each) => each.slug === slug)
      const before = builds[at]
      const one = before && (await again(before))
      if (!one) return undefined
      return {journal: whole(builds.with(at, one)), one, isWhole: onRack(one) === onRack(before)}
    },
  })
  return whole(planned)
}

/** Stands for what a build does to the rack, and for what it asks of it or reserves there. */
const onRack = ({build, plan}: PlannedBuild): string =>
  JSON.stringify([build.values.started, onlyReserves(build), namedBy(build.values), leftBy(build, plan)])

/** What other builds need to know of one: its name and what it was copied from. */
export function nameOf({slug, build}: Pick<OpenBuild, 'slug' | 'build'>): Surroundings['builds'][number] {
  const basedOn = build.values['based-on']?.value
  return {slug, ...(basedOn === undefined ? {} : {basedOn})}
}

/** Plan and check a build that was read, among the files and builds around it. */
export async function planOpened(
  opened: OpenBuild,
  surroundings: Surroundings,
  {settings, ...rack}: {settings: JournalSettings} & RackContext,
  steps: ReadingSteps,
): Promise<PlannedBuild> {
  const {key, build, problems} = opened
  const {near, looked, faults} = await lookAround(opened, surroundings, steps)
  const around = {...near, ...(looked.troubles.length > 0 && {troubles: looked.troubles})}
  const input: PlanInput = {
    read: {key, build, problems},
    text: opened.text,
    surroundings: around,
    context: {journal: settings, ...rack},
  }
  const planned = await steps.plan(input)
  // It is read again where its pages are made: of a thousand builds each is in memory once.
  const kept = {...input, read: {...input.read, build: planned.build}}
  return {...opened, ...planned, problems: [...faults, ...planned.problems], looked, rack, input: kept}
}

/** Look at what a build names around it; where this program fails at that, nothing is there, and why is told. */
async function lookAround({build, folder}: OpenBuild, surroundings: Surroundings, steps: ReadingSteps) {
  try {
    const near = relevant(build, surroundings)
    return {near, looked: await lookAtFiles(build, folder, near.files, steps), faults: []}
  } catch (error) {
    const looked: LookedAt = {pictures: new Map(), files: [], troubles: []}
    const faults = [programFails('look at the files of', error)]
    return {near: {files: [], builds: surroundings.builds}, looked, faults}
  }
}

/** A build of the journal, read; `problems` are the reader's own. */
export interface OpenBuild extends BuildFile, ReadResult {
  text: string
  /** The key of the reading alone. */
  readKey: string
}

/** Read one build file of a journal. */
export async function openBuild(
  found: BuildFile,
  settings: JournalSettings,
  steps: ReadingSteps,
): Promise<OpenBuild> {
  const there = await readText(dirname(found.path), basename(found.path))
  const text = 'text' in there ? there.text : ''
  const unread = 'text' in there ? [] : notRead(there)
  const read = await steps.read({slug: found.slug, text, journal: settings})
  const own = [...unread, ...(found.twice ? [twiceProblem(found.file, found.twice)] : [])]
  if (own.length === 0) return {...found, ...read, text, readKey: read.key}
  // A file that could not be read has nothing else wrong with it.
  const problems = unread.length > 0 ? own : [...own, ...read.problems]
  return {...found, ...read, text, readKey: read.key, key: keyOf(read.key, JSON.stringify(own)), problems}
}

const twiceProblem = (file: string, other: string): Problem<RuleName> => ({
  rule: 'build-twice',
  severity: 'error',
  line: 1,
  column: 1,
  endLine: 1,
  endColumn: 1,
  message: `this build is there twice, as ${file} and as ${other}; keep one`,
})

/**
 * Plan builds with the wood that stands on the rack on their day, and say how the rack stands after them all.
 * Those that do not look at the rack are planned first, several at a time; the others wait for those before them.
 */
export async function planOnRack<O extends {build: RackBuild}, P extends {plan: Plan}>(
  rack: Rack,
  opened: readonly O[],
  plan: (one: O, context: RackContext) => Promise<P>,
): Promise<{planned: P[]; rackLeft: Rack}> {
  const sees = seesRack(rack)
  const alone = async (one: O) => (sees(one.build) ? undefined : plan(one, noRack))
  const planned: (P | undefined)[] = await pMap(opened, alone, together)
  const places = new Map(opened.map(({build}, at) => [build, at]))
  const rackLeft = await throughRack(
    rack,
    opened.map(({build}) => build),
    async (build, context) => {
      const at = places.get(build)!
      const one = planned[at] ?? (await plan(opened[at]!, context))
      planned[at] = one
      return one.plan
    },
    sees,
  )
  return {planned: planned.map((one) => one!), rackLeft}
}
