import {type Cache, keyOf} from '../kit/cache.ts'
import type {Known, KnownPage, Page, Unmade} from '../kit/page.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'
import {pagesOfTheJournal, searchOfTheJournal} from '../pages/all.ts'
import {atHand, type KnownWhole} from '../publish/site-writer.ts'
import {isKnownPages} from '../steps/kept-shapes.ts'

/**
 * Know the pages of the whole journal, whose builds have the pages `own`: they are made again where what they show is
 * other than it was, and not for every word. What cannot be made is told.
 */
export async function journalPages(
  site: SiteData,
  own: readonly KnownPage[],
  cache: Cache,
): Promise<{pages: KnownWhole[]; unmade: readonly Unmade[]}> {
  // The words of all builds are searched, and nothing else is made of them.
  const search = searchOfTheJournal(site)
  const isOther = ({address}: Known) => !search.some((page) => page.address === address)
  let made: {pages: Page[]; unmade: Unmade[]} | undefined
  const make = () => {
    const unmade: Unmade[] = []
    made ??= {pages: pagesOfTheJournal(site, own, unmade).filter(isOther), unmade}
    return made
  }
  const first = async () => {
    const {pages, unmade} = make()
    return {pages: pages.map(({address, key}) => ({address, key})), unmade}
  }
  const {pages, unmade} = await cache.value(keyOfSite(site, own), first, isKnownPages)
  return {
    pages: [
      {pages, files: [], whole: async () => ({pages: make().pages, files: []})},
      atHand({pages: search, files: []}),
    ],
    unmade,
  }
}

function keyOfSite({around, journal, rack, unread, builds}: SiteData, own: readonly KnownPage[]): string {
  return keyOf(
    'journal',
    JSON.stringify([around, journal, rack, unread]),
    ...own.map(({address, data}) => `${address} ${data.unlisted}`),
    ...builds.map(keyOfBuild),
  )
}

/** Of what the pages of the whole journal show of a build, by the build: most are the same at the next look. */
const keys = new WeakMap<SiteBuild, string>()

function keyOfBuild(one: SiteBuild): string {
  const known = keys.get(one)
  if (known) return known
  const key = keyOf(shownOf(one))
  keys.set(one, key)
  return key
}

function shownOf(one: SiteBuild): string {
  const {slug, file, title, key, build, problems, isDraft, made, cover, pictures} = one
  const told = problems.map(({rule, severity, message}) => [rule, severity, message])
  const {hanging, headings, drawings} = made
  const shown = [slug, file, title, key, told, isDraft, hanging, headings, drawings, cover]
  return JSON.stringify([...shown, [...pictures], inOrder(build)])
}

/** What the days of a build tell, in their order, and not at which lines they stand. */
function inOrder({days, links}: SiteBuild['build']): unknown[] {
  return [...days, ...links].sort((a, b) => a.place.line - b.place.line).map(({place: _, ...one}) => one)
}
