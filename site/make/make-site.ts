import pMap from 'p-map'
import type {Build} from '../../plugins/build-file/build.ts'
import type {JournalSettings} from '../../plugins/build-file/schema.ts'
import {namedBy, onlyReserves, type Rack, standingOn} from '../../plugins/plan/rack.ts'
import type {Cache} from '../cache.ts'
import {together} from '../journal/folder.ts'
import {type PlannedBuild, readJournalFolder} from '../journal/read-journal.ts'
import type {FileProblems, SiteBuild, SiteData, Surround} from '../site-data.ts'
import {cachedSteps} from '../steps/steps.ts'
import {asPublished} from './as-published.ts'
import {kinOf, siteBuild} from './site-build.ts'

/** How this site is made: where it will lie, and whether for somebody who is writing. */
interface SiteOptions {
  prefix: string
  isWriting: boolean
  assets: Surround['assets']
}

/**
 * Make all that pages are written from, of the journal at `root` as it is now; and list what is wrong with it.
 * It is stopped by an error in the file of a build that it shows, or in the settings or the rack.
 */
export async function makeSite(
  root: string,
  options: SiteOptions,
  cache: Cache,
): Promise<{site: SiteData; problems: FileProblems[]; isStopped: boolean}> {
  const steps = cachedSteps(cache)
  const {settings, rackLeft, builds, problems, others} = await readJournalFolder(root, steps)
  const isShown = ({build}: PlannedBuild) => options.isWriting || build.values.publish?.value !== false
  const tellsMoney = options.isWriting || settings['show-money']?.value === true
  const shown = builds.filter(isShown).map((one) => (tellsMoney ? one : asPublished(one)))
  const {rate, ...quiet} = settings
  const told = tellsMoney ? settings : quiet
  const around = surround(settings, options)
  const hidden = builds.filter((one) => !isShown(one)).map(({slug}) => slug)
  const among = {
    shown: kinOf(shown, hidden),
    hidden,
    textOf: new Map(shown.map(({slug, text}) => [slug, text])),
    around,
    journal: told,
    cache,
    steps,
  }
  const made = await pMap(shown, (one) => siteBuild(one, among), together)
  return {
    site: {
      around,
      journal: told,
      rack: rackToday(rackLeft, builds, among.hidden),
      builds: made.sort(newestFirst),
      unread: others,
    },
    problems: [...problems, ...builds.map((one) => withFaults(one, made))]
      .map((one) => ({file: one.file, problems: one.problems}))
      .sort((a, b) => (a.file < b.file ? -1 : 1)),
    isStopped: [...problems, ...shown].some((one) => one.problems.some(({severity}) => severity === 'error')),
  }
}

const withFaults = ({file, slug, problems}: PlannedBuild, made: readonly SiteBuild[]): FileProblems => ({
  file,
  problems: [...problems, ...(made.find((one) => one.slug === slug)?.made.faults ?? [])],
})

/** A draft's wood counts, and its name does not stand in the names of its offcuts. */
function rackToday(rack: Rack, builds: readonly PlannedBuild[], hidden: readonly string[]): SiteData['rack'] {
  const day = lastDay(builds.map(({build}) => build))
  const {pieces, lots} = standingOn(rack, day)
  const shown = pieces.map((piece) => {
    const draft = piece.from && hidden.find((slug) => slug === piece.from?.build)
    return draft ? {...piece, id: piece.id.replace(`${draft}.`, '')} : piece
  })
  const reserved = builds.flatMap(({slug, build}) =>
    onlyReserves(build) && !hidden.includes(slug) ? namedBy(build.values).map((id) => ({id, by: slug})) : [],
  )
  return {pieces: shown, lots, reserved, day}
}

function surround(settings: JournalSettings, options: SiteOptions): Surround {
  return {
    ...options,
    title: settings.title?.value ?? 'Build journal',
    maker: settings.maker?.value,
    ask: settings.ask?.value,
    origin: settings.site?.value.replace(/\/+$/, ''),
  }
}

const dateOf = ({build}: SiteBuild) => (build.values.finished ?? build.values.started)?.iso ?? ''

function newestFirst(a: SiteBuild, b: SiteBuild): number {
  return dateOf(a) === dateOf(b) ? (a.slug < b.slug ? -1 : 1) : dateOf(a) > dateOf(b) ? -1 : 1
}

/** Find the last date that the builds of a journal carry: the day that "today" means on the rack's page. */
function lastDay(builds: readonly Build[]): string | undefined {
  const days = builds.flatMap(({values, days: entries}) => [
    values.started?.iso,
    values.finished?.iso,
    values.measured?.on?.iso,
    ...(values.played ?? []).map(({on}) => on?.iso),
    ...entries.map(({iso}) => iso),
  ])
  return days
    .filter((day) => day !== undefined)
    .sort()
    .at(-1)
}
