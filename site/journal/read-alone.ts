import {join} from 'node:path'
import type {Surroundings} from '../../plugins/build-file/schema/build.ts'
import type {JournalSettings} from '../../plugins/build-file/schema/schema.ts'
import {noRack, type RackContext, rackOf, seesRack} from '../../plugins/plan/stock/rack.ts'
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

/** What is known of the builds of a journal without reading them, by their slugs. */
interface Known {
  names: ReadonlyMap<string, Surroundings['builds'][number]>
  /** What stood on the rack for one that looks at it. */
  rackOf: (slug: string) => Promise<RackContext | undefined>
}

/**
 * Read and plan one build (its slug) of the journal at `root` and what it was copied from; of the others no more is read
 * than is `known`. Undefined where there is no such build, or where one of the two looks at the rack and it is not known
 * what stood there.
 */
export async function readAlone(
  root: string,
  slug: string,
  known: Known,
  steps: ReadingSteps,
): Promise<ReadAlone | undefined> {
  const {settings, rack} = await readSettings(join(root, 'builds'))
  const {builds: found} = await listBuilds(root)
  const filesOf = folderLists(found)
  const sees = seesRack(rackOf(rack))
  const opened = async (of: string | undefined): Promise<OpenBuild | undefined> => {
    const file = found.find((each) => each.slug === of)
    return file && openBuild(file, settings, steps)
  }
  const own = await opened(slug)
  const from = own?.build.values['based-on']?.value
  const first = from === slug ? undefined : await opened(from)
  if (!own?.text || first?.text === '') return undefined
  const names = found.map(({slug: each}) => {
    const open = [own, first].find((one) => one?.slug === each)
    return open ? nameOf(open) : (known.names.get(each) ?? {slug: each})
  })
  const plan = async (one: OpenBuild) => {
    const context = sees(one.build) ? await known.rackOf(one.slug) : noRack
    return (
      context && planOpened(one, {files: await filesOf(one), builds: names}, {settings, ...context}, steps)
    )
  }
  const [one, original] = [await plan(own), first && (await plan(first))]
  if (!one || (first && !original)) return undefined
  return {one, original, settings, slugs: found.map((each) => each.slug)}
}
