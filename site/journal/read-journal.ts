import {basename, join} from 'node:path'
import type {Surroundings} from '../../plugins/build-file/build.ts'
import type {Problem} from '../../plugins/build-file/problem.ts'
import {inOrder} from '../../plugins/build-file/read.ts'
import type {JournalSettings, StockPiece} from '../../plugins/build-file/schema.ts'
import {checks} from '../../plugins/checks/checks.ts'
import {planBuild} from '../../plugins/plan/plan-build.ts'
import type {Plan} from '../../plugins/plan/shape/plan.ts'
import {type BuildFile, listBuilds, type NoBuild} from './list-builds.ts'
import {type OpenBuild, openBuild} from './open-build.ts'
import {readSettings} from './read-settings.ts'

/** A build, planned and checked; `problems` are all that were found, in the order of the file. */
export interface PlannedBuild extends OpenBuild {
  plan: Plan
}

export interface Journal {
  settings: JournalSettings
  rack: StockPiece[]
  builds: PlannedBuild[]
  /** Problems of `journal.yaml` and `rack.yaml`. */
  problems: {file: string; problems: Problem[]}[]
  /** Markdown files that are no build, and why. */
  others: NoBuild[]
}

/** Read, plan and check every build of the journal at `root` (the folder that holds `builds/`). */
export async function readJournalFolder(root: string): Promise<Journal> {
  const {settings, rack, problems} = await readSettings(join(root, 'builds'))
  const {builds: found, others} = await listBuilds(root)
  const folders = foldersOf(found)
  const opened = await Promise.all(found.map((each) => openBuild(each, settings, folders)))
  const names = opened.map(nameOf)
  const builds = opened.map((each) => planOpened(each, names, settings))
  return {
    settings,
    rack,
    builds,
    others,
    problems: problems.map((each) => ({...each, file: `builds/${each.file}`})),
  }
}

/** The folders that belong to builds of their own. */
export const foldersOf = (found: readonly BuildFile[]): Set<string> =>
  new Set(found.filter(({file}) => file.endsWith('/index.md')).map(({folder}) => basename(folder)))

/** What other builds need to know of one: its name and what it was copied from. */
export function nameOf({slug, build}: Pick<OpenBuild, 'slug' | 'build'>): Surroundings['builds'][number] {
  const basedOn = build.values['based-on']?.value
  return {slug, ...(basedOn === undefined ? {} : {basedOn})}
}

/** Plan and check a build that was read, among the others that are named. */
export function planOpened(
  opened: OpenBuild,
  names: Surroundings['builds'],
  settings: JournalSettings,
): PlannedBuild {
  const build = {
    ...opened.build,
    surroundings: {files: opened.build.surroundings?.files ?? [], builds: names},
  }
  const plan = planBuild(build, {journal: settings, pieces: []})
  return {...opened, build, plan, problems: inOrder([...opened.problems, ...checks(build, plan)])}
}
