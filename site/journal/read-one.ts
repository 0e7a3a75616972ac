import {join} from 'node:path'
import pMap from 'p-map'
import type {Surroundings} from '../../plugins/build-file/schema/build.ts'
import type {JournalSettings} from '../../plugins/build-file/schema/schema.ts'
import {noRack, type RackContext, rackOf, seesRack} from '../../plugins/plan/stock/rack.ts'
import {uncachedSteps} from '../steps/run-steps.ts'
import type {Steps} from '../steps/steps.ts'
import type {Found} from './find-file.ts'
import {folderLists, together} from './folder.ts'
import {type BuildFile, listBuilds} from './list-builds.ts'
import {
  nameOf,
  type OpenBuild,
  openBuild,
  type PlannedBuild,
  planOnRack,
  planOpened,
  readJournalFolder,
} from './read-journal.ts'
import {readSettings} from './settings.ts'

/** Read, plan and check one build that was found, within its journal or among its neighbours where it lies. */
export async function readOne(
  found: Extract<Found, {build: BuildFile}>,
  root: string,
): Promise<PlannedBuild> {
  if (found.isOfJournal) {
    const journal = await readJournalFolder(root, uncachedSteps())
    const own = journal.builds.find(({path}) => path === found.build.path)
    if (own) return own
  }
  const {settings, rack} = await readSettings(found.journalFolder)
  const {builds: beside} = await listBuilds(join(found.journalFolder, '..'), found.journalFolder)
  const steps = uncachedSteps()
  const opened = await openBuild(found.build, settings, steps)
  const builds = await ancestry(nameOf(opened), beside, settings, steps)
  const files = await folderLists(beside)(found.build)
  const planOne = (one: OpenBuild, context: RackContext) =>
    planOpened(one, {files: one === opened ? files : [], builds}, {settings, ...context}, steps)
  const start = rackOf(rack)
  if (rack.length === 0 || !seesRack(start)(opened.build)) return planOne(opened, noRack)
  const others = beside.filter(({path}) => path !== opened.path)
  const around = await pMap(others, (each) => openBuild(each, settings, steps), together)
  const {planned} = await planOnRack(start, [opened, ...around], planOne)
  return planned[0]!
}

/** Name the neighbours, and read of those alone that the build descends from what they were copied from. */
async function ancestry(
  own: Surroundings['builds'][number],
  beside: readonly BuildFile[],
  settings: JournalSettings,
  steps: Steps,
): Promise<Surroundings['builds']> {
  const names = new Map(beside.map(({slug}) => [slug, {slug} as Surroundings['builds'][number]]))
  names.set(own.slug, own)
  const seen = new Set([own.slug])
  for (let slug = own.basedOn; slug !== undefined && !seen.has(slug); ) {
    seen.add(slug)
    const file = beside.find((each) => each.slug === slug)
    if (!file) break
    const name = nameOf(await openBuild(file, settings, steps))
    names.set(name.slug, name)
    slug = name.basedOn
  }
  return [...names.values()]
}
