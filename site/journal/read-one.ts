import {join} from 'node:path'
import type {Surroundings} from '../../plugins/build-file/build.ts'
import type {JournalSettings} from '../../plugins/build-file/schema.ts'
import {type RackContext, seesRack, shelfOf} from '../../plugins/plan/rack.ts'
import {inTurns} from '../work/in-turns.ts'
import {ownWorks} from '../work/own-works.ts'
import type {Works} from '../work/works.ts'
import type {Found} from './find-file.ts'
import {folderLists} from './folder-lists.ts'
import {type BuildFile, listBuilds} from './list-builds.ts'
import {type OpenBuild, openBuild} from './open-build.ts'
import {planOnRack} from './plan-on-rack.ts'
import {nameOf, type PlannedBuild, planOpened, readJournalFolder} from './read-journal.ts'
import {readSettings} from './read-settings.ts'

/** Read, plan and check one build that was found, within its journal or among its neighbours where it lies. */
export async function readOne(
  found: Extract<Found, {build: BuildFile}>,
  root: string,
): Promise<PlannedBuild> {
  if (found.isOfJournal) {
    const journal = await readJournalFolder(root, ownWorks())
    const own = journal.builds.find(({path}) => path === found.build.path)
    if (own) return own
  }
  const {settings, rack} = await readSettings(found.journalFolder)
  const {builds: beside} = await listBuilds(join(found.journalFolder, '..'), found.journalFolder)
  const works = ownWorks()
  const opened = await openBuild(found.build, settings, works)
  const builds = await ancestry(nameOf(opened), beside, settings, works)
  const files = await folderLists(beside)(found.build)
  const planOne = (one: OpenBuild, context: RackContext) =>
    planOpened(one, {files: one === opened ? files : [], builds}, {settings, ...context}, works)
  if (rack.length === 0 || !seesRack(opened.build)) return planOne(opened, {pieces: [], gone: []})
  const others = beside.filter(({path}) => path !== opened.path)
  const around = await inTurns(others, (each) => openBuild(each, settings, works))
  const {planned} = await planOnRack(shelfOf(rack), [opened, ...around], planOne)
  return planned[0]!
}

/** Name the neighbours, and read of those alone that the build descends from what they were copied from. */
async function ancestry(
  own: Surroundings['builds'][number],
  beside: readonly BuildFile[],
  settings: JournalSettings,
  works: Works,
): Promise<Surroundings['builds']> {
  const names = new Map(beside.map(({slug}) => [slug, {slug} as Surroundings['builds'][number]]))
  names.set(own.slug, own)
  const seen = new Set([own.slug])
  for (let slug = own.basedOn; slug !== undefined && !seen.has(slug); ) {
    seen.add(slug)
    const file = beside.find((each) => each.slug === slug)
    if (!file) break
    const name = nameOf(await openBuild(file, settings, works))
    names.set(name.slug, name)
    slug = name.basedOn
  }
  return [...names.values()]
}
