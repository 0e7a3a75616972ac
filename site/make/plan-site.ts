import type {Build} from '../../plugins/build-file/schema/build.ts'
import type {JournalSettings} from '../../plugins/build-file/schema/schema.ts'
import {namedBy, onlyReserves, type Rack, standingOn} from '../../plugins/plan/stock/rack.ts'
import {type Journal, type PlannedBuild, readJournalFolder} from '../journal/read-journal.ts'
import type {Cache} from '../kit/cache.ts'
import type {FileProblems, SiteData, Surround} from '../kit/site-data.ts'
import {cachedSteps, loadSteps} from '../steps/cached-steps.ts'
import {outlineSteps} from '../steps/outline.ts'
import type {Steps} from '../steps/steps.ts'
import {asPublished, tellsMoney, withoutRate} from './as-published.ts'
import {kinOf, named, relationOf} from './kin.ts'
import {keepList} from './list-of-builds.ts'
import type {OfAll} from './own-pages.ts'
import type {WaitedProgress} from './progress.ts'

/** How this site is made: where it will lie, and whether for somebody who is writing. */
export interface SiteOptions {
  prefix: string
  isWriting: boolean
  assets: Surround['assets']
}

/** A journal that was read and planned, before any page of it is made. */
export interface PlannedSite {
  /** The builds that the site shows, in outline, newest first. */
  shown: readonly PlannedBuild[]
  /** What their pages are made among. */
  all: OfAll
  /** What is known of the site besides its builds. */
  around: Omit<SiteData, 'builds'>
  /** Of every file of the journal, in their order. */
  problems: FileProblems[]
  /** There is an error in the file of a build that is shown, or in the settings or the rack. */
  isStopped: boolean
  /** Read and plan one build that is shown (its slug) again, all else as it was; undefined where more may be other. */
  again: (slug: string) => Promise<Again | undefined>
}

/** A build that was planned again, and what its pages are made among. */
export interface Again {
  one: PlannedBuild
  all: OfAll
  /** The journal with it, where no other build's plan changes by it. */
  follows?: Follows | undefined
}

interface Follows {
  site: PlannedSite
  /** It is called as before: only the pages of builds that were copied from it may show another thing. */
  isCalledAlike: boolean
}

/**
 * Read and plan the journal at `root` as it is now. What did not change is known by its outline, and no more is read.
 * Before each build it waits for whoever is `told`.
 */
export async function planSite(
  root: string,
  options: SiteOptions,
  cache: Cache,
  told: WaitedProgress = () => {},
): Promise<PlannedSite> {
  const load = loadSteps()
  let tell = told
  const steps = counted(outlineSteps(cachedSteps(cache, load), cache), (...how) => tell(...how))
  const journal = await readJournalFolder(root, steps)
  // One that is read again later is not of this work.
  tell = () => {}
  await keepList(cache, journal.builds)
  return siteOf(journal, options, {cache, load})
}

function siteOf(read: Journal, options: SiteOptions, made: Pick<OfAll, 'cache' | 'load'>): PlannedSite {
  const {settings, rackLeft, builds, problems, others} = read
  const isHidden = ({build}: PlannedBuild) => !options.isWriting && build.values.publish?.value === false
  const isTold = tellsMoney(options, settings)
  const asShown = (one: PlannedBuild) => (isTold ? one : asPublished(one))
  const shown = builds.filter((one) => !isHidden(one)).map(asShown)
  const journal = isTold ? settings : withoutRate(settings)
  const hidden = builds.filter(isHidden).map(({slug}) => slug)
  const around = surround(settings, options)
  const bySlug = new Map(shown.map((one) => [one.slug, one]))
  const kin = kinOf(shown.map(relationOf), (slug) => bySlug.get(slug), hidden)
  return {
    shown: shown.toSorted(newestFirst),
    all: {kin, around, journal, ...made},
    around: {around, journal, rack: rackToday(rackLeft, builds, hidden), unread: others},
    problems: [...problems, ...builds]
      .map((one) => ({file: one.file, problems: one.problems}))
      .sort((a, b) => (a.file < b.file ? -1 : 1)),
    isStopped: [...problems, ...shown].some((one) => one.problems.some(({severity}) => severity === 'error')),
    again: async (slug) => {
      const before = bySlug.get(slug)
      const now = before && (await read.again(slug))
      if (!now || isHidden(now.one)) return undefined
      const site = siteOf(now.journal, options, made)
      const one = asShown(now.one)
      const isCalledAlike = named(one).title === named(before).title
      return {one, all: site.all, follows: now.isWhole ? {site, isCalledAlike} : undefined}
    },
  }
}

/** All builds are read before the first is planned. */
function counted<S extends Pick<Steps, 'read' | 'plan'>>(steps: S, told: WaitedProgress): S {
  let [read, planned] = [0, 0]
  return {
    ...steps,
    read: async (input) => {
      await told('Reading', ++read)
      return steps.read(input)
    },
    plan: async (input) => {
      await told('Planning', ++planned, read)
      return steps.plan(input)
    },
  } satisfies Pick<Steps, 'read' | 'plan'> & S
}

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

/** What every page of a journal with these settings is framed with. */
export function surround(settings: JournalSettings, options: SiteOptions): Surround {
  return {
    ...options,
    title: settings.title?.value ?? 'Build journal',
    maker: settings.maker?.value,
    ask: settings.ask?.value,
    origin: settings.site?.value.replace(/\/+$/, ''),
  }
}

const dateOf = ({build}: PlannedBuild) => (build.values.finished ?? build.values.started)?.iso ?? ''

function newestFirst(a: PlannedBuild, b: PlannedBuild): number {
  return dateOf(a) === dateOf(b) ? (a.slug < b.slug ? -1 : 1) : dateOf(a) > dateOf(b) ? -1 : 1
}

/** Find the last date that the builds of a journal carry: the day that "today" means on the rack's page. */
function lastDay(builds: readonly Build[]): string | undefined {
  let last: string | undefined
  const carry = (day: string | undefined) => {
    if (day !== undefined && !(last !== undefined && last >= day)) last = day
  }
  for (const {values, days} of builds) {
    for (const day of [values.started, values.finished, values.measured?.on]) carry(day?.iso)
    for (const {on} of values.played ?? []) carry(on?.iso)
    for (const {iso} of days) carry(iso)
  }
  return last
}
