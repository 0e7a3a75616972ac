import {join} from 'node:path'
import type {Surroundings} from '../../plugins/build-file/schema/build.ts'
import type {JournalSettings} from '../../plugins/build-file/schema/schema.ts'
import {noRack, rackOf, seesRack} from '../../plugins/plan/stock/rack.ts'
import {folderLists} from './folder.ts'
import {listBuilds} from './list-builds.ts'
import {
  nameOf,
  type OpenBuild,
  openBuild,
  type PlannedBuild,
  planOpened,
  type ReadingSteps,
} from './read-journal.ts'
import {readSettings} from './settings.ts'

/** A build that was read and planned without the others. */
interface ReadAlone {
  one: PlannedBuild
  /** What it was copied from, where that is there. */
  original: PlannedBuild | undefined
  settings: JournalSettings
  /** All builds that there are. */
  slugs: readonly string[]
}

/**
 * Read and plan one build (its slug) of the journal at `root` and what it was copied from; of the others it is `known` what
 * they were copied from, and no more is read. Undefined where there is no such build, or one of the two looks at the rack,
 * which others may have left otherwise.
 */
export async function readAlone(
  root: string,
  slug: string,
  known: ReadonlyMap<string, Surroundings['builds'][number]>,
  steps: ReadingSteps,
): Promise<ReadAlone | undefined> {
  const {settings, rack} = await readSettings(join(root, 'builds'))
  const {builds: found} = await listBuilds(root)
  const filesOf = folderLists(found)
  const sees = seesRack(rackOf(rack))
  const opened = async (slug: string | undefined): Promise<OpenBuild | undefined> => {
    const file = found.find((each) => each.slug === slug)
    return file && openBuild(file, settings, steps)
  }
  const own = await opened(slug)
  const from = own?.build.values['based-on']?.value
  const first = from === slug ? undefined : await opened(from)
  if (!own || [own, first].some((one) => one && (one.text === '' || sees(one.build)))) return undefined
  const names = found.map(({slug: each}) => {
    const open = [own, first].find((one) => one?.slug === each)
    return open ? nameOf(open) : (known.get(each) ?? {slug: each})
  })
  const plan = async (one: OpenBuild) =>
    planOpened(one, {files: await filesOf(one), builds: names}, {settings, ...noRack}, steps)
  return {
    one: await plan(own),
    original: first && (await plan(first)),
    settings,
    slugs: found.map((each) => each.slug),
  }
}
