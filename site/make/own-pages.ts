import type {JournalSettings} from '../../plugins/build-file/schema/schema.ts'
import {noRack} from '../../plugins/plan/stock/rack.ts'
import type {PlannedBuild} from '../journal/read-journal.ts'
import {type Cache, keyOf, noting} from '../kit/cache.ts'
import {drawnCover} from '../kit/own-names.ts'
import type {Page, Unmade} from '../kit/page.ts'
import type {SiteBuild, Surround} from '../kit/site-data.ts'
import {pagesOfBuilds} from '../pages/all.ts'
import type {Whole} from '../publish/site-writer.ts'
import {cachedSteps} from '../steps/cached-steps.ts'
import {isSummary} from '../steps/kept-shapes.ts'
import type {Summary} from '../steps/results.ts'
import type {Steps} from '../steps/steps.ts'
import {keepGlance, keptGlance, known, openingOf} from './glance.ts'
import {type AmongKin, aloneOf, amongKin, type Kin, named, withoutDrafts} from './kin.ts'
import {type PublishedFiles, publishedFiles} from './published-files.ts'
import {siteBuild} from './site-build.ts'

/** The pages and files of one build, known; and what makes them. */
export interface OwnPages extends Pick<Summary, 'pages' | 'files' | 'faults' | 'unmade'> {
  /** The build in outline, as the pages of the whole journal see it. */
  one: SiteBuild
  whole: () => Promise<Whole>
}

/** What all builds of a site are made among. */
export interface OfAll {
  kin: Kin
  around: Surround
  journal: JournalSettings
  cache: Cache
  load: () => Promise<Steps>
}

/** Know the pages of a build: from its summary where all is as it was, else by making them. */
export async function ownPages(one: PlannedBuild, all: OfAll): Promise<OwnPages> {
  return ownPagesAmong(one, all, lookedUp(one, all))
}

async function ownPagesAmong(one: PlannedBuild, all: OfAll, among: Found): Promise<OwnPages> {
  const {around, journal, cache} = all
  const make = async () => {
    const noted = noting(cache)
    const steps = cachedSteps(noted.cache, all.load)
    const built = await siteBuild(one, {...among, around, journal, cache: noted.cache, steps})
    const unmade: Unmade[] = []
    const pages = pagesOfBuilds({around, journal, rack: nothingOnRack, builds: [built], unread: []}, unmade)
    if (unmade.length === 0) await keepGlance(one, built, {pages, cache: noted.cache})
    const from = [...noted.keys, ...built.files.flatMap(({keptAs}) => keptAs ?? [])]
    return {pages, files: built.files, summary: summaryOf(built, {pages, unmade, from})}
  }
  let waiting: Whole | undefined
  const first = async () => {
    const {summary, ...whole} = await make()
    waiting = whole
    return summary
  }
  const summary = await cache.value(summaryKey(one, among, all), first, isSummary)
  cache.still(summary.from)
  const {pages, files, faults, unmade} = summary
  return {
    one: outlined(one, summary, {...among, hidden: all.kin.hidden}),
    pages,
    files,
    faults,
    unmade,
    whole: async () => {
      const whole = waiting ?? (await make())
      waiting = undefined
      return whole
    },
  }
}

type Found = AmongKin & PublishedFiles & {failed?: unknown}

/** Find what a build's pages depend on around it; where this program fails at that, nothing is there. */
function lookedUp(one: PlannedBuild, {kin, cache}: OfAll): Found {
  try {
    return {...amongKin(one, kin), ...publishedFiles(one, cache)}
  } catch (failed) {
    return {...aloneOf(one, kin), pictures: new Map(), files: [], failed}
  }
}

/** Name all that a build's pages are made from. */
const summaryKey = (one: PlannedBuild, among: Found, {around, journal}: OfAll): string => {
  const {original, pictures, files, failed, ...others} = among
  const of = [
    around,
    journal,
    others,
    original?.key,
    [...pictures],
    files.map(({address, key}) => [address, key]),
    String(failed),
  ]
  return keyOf('summary', one.key, one.file, JSON.stringify(of))
}

const nothingOnRack = {pieces: [], lots: [], reserved: [], day: undefined}

function summaryOf(
  built: SiteBuild,
  {pages, unmade, from}: Pick<Summary, 'unmade' | 'from'> & {pages: readonly Page[]},
): Summary {
  const {headings, hanging, words} = built.made
  return {
    made: {headings, hanging, words},
    cover: openingOf(built),
    faults: built.made.faults,
    pages: pages.map(known),
    files: built.files.map(({address, key}) => ({address, key})),
    unmade,
    from,
  }
}

/** What the pages of the whole journal show of a build. */
export type Seen = Pick<OwnPages, 'one' | 'pages'>

/**
 * Look for what is kept of a build: its pages, or else what others show of it, be it from a site that was made for other
 * readers.
 */
export async function keptPages(
  one: PlannedBuild,
  all: OfAll,
): Promise<{own: OwnPages} | {seen: Seen} | undefined> {
  const {cache, kin} = all
  const among = lookedUp(one, all)
  if (await cache.kept(summaryKey(one, among, all), isSummary))
    return {own: await ownPagesAmong(one, all, among)}
  const seen = await keptGlance(one, cache)
  return seen && {seen: {one: outlined(one, seen, {...among, hidden: kin.hidden}), pages: seen.pages}}
}

function outlined(
  one: PlannedBuild,
  {made, cover, faults}: Pick<Summary, 'made' | 'cover' | 'faults'>,
  {pictures, told, hidden}: Pick<Found, 'pictures' | 'told'> & Pick<Kin, 'hidden'>,
): SiteBuild {
  const {slug, file, plan, build} = one
  return {
    slug,
    file,
    title: named(one).title,
    text: '',
    build,
    plan,
    problems: [...told, ...faults],
    relatives: {copies: []},
    family: {rows: [], isCircle: false, more: 0},
    rack: noRack,
    isDraft: build.values.publish?.value === false,
    made: {
      ...made,
      words: withoutDrafts(made.words, build, hidden),
      state: '',
      drawing: '',
      html: '',
      drawings: cover === undefined ? {} : {[drawnCover]: cover},
      faults,
    },
    cover: build.values.cover && pictures.get(build.values.cover.value),
    pictures,
    key: one.shown ?? '',
    files: [],
    ungiven: [],
  }
}
