import {join} from 'node:path'
import type {Surroundings} from '../../plugins/build-file/build.ts'
import type {Problem} from '../../plugins/build-file/problem.ts'
import type {JournalSettings, StockPiece} from '../../plugins/build-file/schema.ts'
import {type RackContext, type Shelf, shelfOf} from '../../plugins/plan/rack.ts'
import type {Plan} from '../../plugins/plan/shape/plan.ts'
import {inTurns} from '../work/in-turns.ts'
import {relevant} from '../work/relevant.ts'
import type {Works} from '../work/works.ts'
import {folderLists} from './folder-lists.ts'
import {listBuilds, type NoBuild} from './list-builds.ts'
import {type OpenBuild, openBuild} from './open-build.ts'
import {planOnRack} from './plan-on-rack.ts'
import {readSettings} from './read-settings.ts'

/** A build, planned and checked; `problems` are all that were found, in the order of the file. */
export interface PlannedBuild extends OpenBuild {
  plan: Plan
}

export interface Journal {
  settings: JournalSettings
  rack: StockPiece[]
  /** The rack as it stands after all builds. */
  shelf: Shelf
  builds: PlannedBuild[]
  /** Problems of `journal.yaml` and `rack.yaml`. */
  problems: {file: string; problems: Problem[]}[]
  /** Markdown files that are no build, and why. */
  others: NoBuild[]
}

/** Read, plan and check every build of the journal at `root` (the folder that holds `builds/`). */
export async function readJournalFolder(root: string, works: Works): Promise<Journal> {
  const {settings, rack, problems} = await readSettings(join(root, 'builds'))
  const {builds: found, others} = await listBuilds(root)
  const opened = await inTurns(found, (each) => openBuild(each, settings, works))
  const filesOf = folderLists(found)
  const names = opened.map(nameOf)
  const {planned: builds, shelf} = await planOnRack(shelfOf(rack), opened, async (each, context) =>
    planOpened(each, {files: await filesOf(each), builds: names}, {settings, ...context}, works),
  )
  return {
    settings,
    rack,
    shelf,
    builds,
    others,
    problems: problems.map((each) => ({...each, file: `builds/${each.file}`})),
  }
}

/** What other builds need to know of one: its name and what it was copied from. */
export function nameOf({slug, build}: Pick<OpenBuild, 'slug' | 'build'>): Surroundings['builds'][number] {
  const basedOn = build.values['based-on']?.value
  return {slug, ...(basedOn === undefined ? {} : {basedOn})}
}

/** Plan and check a build that was read, among the files and builds around it. */
export async function planOpened(
  opened: OpenBuild,
  surroundings: Surroundings,
  {settings, pieces, gone}: {settings: JournalSettings} & RackContext,
  works: Works,
): Promise<PlannedBuild> {
  const {key, build, problems} = opened
  const around = relevant(build, surroundings)
  const read = {key, build, problems}
  const planned = await works.plan({read, surroundings: around, journal: settings, pieces, gone})
  return {...opened, ...planned, build: {...build, surroundings: around}}
}
