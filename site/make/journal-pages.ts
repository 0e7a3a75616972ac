import {breathe} from '../kit/breathe.ts'
import {type Cache, keyOf} from '../kit/cache.ts'
import type {Known, KnownPage, Page, Unmade} from '../kit/page.ts'
import {keyOfShown} from '../kit/shown.ts'
import type {SiteData} from '../kit/site-data.ts'
import {pagesOfTheJournal, searchOfTheJournal} from '../pages/all.ts'
import {atHand, type KnownWhole} from '../publish/site-writer.ts'
import {isKnownPages} from '../steps/kept-shapes.ts'

/**
 * Know the pages of the whole journal, whose builds have the pages `own`: they are made again where what they show is
 * other than it was, and not for every word. What cannot be made is told. `next` is waited for before each kind of them,
 * and may throw.
 */
export async function journalPages(
  site: SiteData,
  own: readonly KnownPage[],
  {cache, next = breathe}: {cache: Cache; next?: () => Promise<void>},
): Promise<{pages: KnownWhole[]; unmade: readonly Unmade[]}> {
  // The words of all builds are searched, and nothing else is made of them.
  const search = searchOfTheJournal(site)
  const isOther = ({address}: Known) => !search.some((page) => page.address === address)
  let made: {pages: Page[]; unmade: Unmade[]} | undefined
  const make = async () => {
    const unmade: Unmade[] = []
    made ??= {pages: (await pagesOfTheJournal(site, own, {unmade, next})).filter(isOther), unmade}
    return made
  }
  const first = async () => {
    const {pages, unmade} = await make()
    return {pages: pages.map(({address, key}) => ({address, key})), unmade}
  }
  const {pages, unmade} = await cache.value(keyOfSite(site, own), first, isKnownPages)
  return {
    pages: [
      {pages, files: [], whole: async () => ({pages: (await make()).pages, files: []})},
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
    ...builds.map(keyOfShown),
  )
}
