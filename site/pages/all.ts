import {keyOf} from '../kit/cache.ts'
import type {KnownPage, Page, Unmade} from '../kit/page.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'
import {benchPages} from './bench.ts'
import {buildFilePages, buildPages, planPages} from './build.ts'
import {carePages} from './care.ts'
import {changesPages} from './changes.ts'
import {feedPage} from './feed.ts'
import {notFoundPage} from './not-found.ts'
import {nowPage} from './now.ts'
import {plannedAndMeasuredPage} from './planned-and-measured.ts'
import {listPage, portfolioPage, searchPage} from './portfolio.ts'
import {rackPage} from './rack.ts'
import {rulesPage} from './rules.ts'
import {sideBySidePage} from './side-by-side.ts'
import {sitemapPage} from './sitemap.ts'
import {sourcesPage} from './sources.ts'
import {aroundPages, tryPages} from './try.ts'
import {woodsPage} from './woods.ts'

/** Pages of single builds, each kind a function from the journal to its pages. */
const ofBuilds = [buildPages, planPages, buildFilePages, carePages, benchPages, changesPages, aroundPages]

/** Pages of the whole journal. */
const ofTheJournal = [
  portfolioPage,
  listPage,
  searchPage,
  nowPage,
  sideBySidePage,
  rackPage,
  plannedAndMeasuredPage,
  tryPages,
  rulesPage,
  woodsPage,
  sourcesPage,
  feedPage,
  notFoundPage,
]

/** Make the pages of single builds, each from that build alone; those that cannot be made are told of. */
export function pagesOfBuilds(site: SiteData, unmade: Unmade[]): Page[] {
  const pages = ofBuilds.flatMap((kind) =>
    site.builds.flatMap(
      (one) =>
        tried(kind, {...site, builds: [one]}, (message) => unmade.push({address: addressOf(one), message})) ??
        [],
    ),
  )
  return pages.map(inLayout(site.around))
}

/** A page that a layout goes around is made of that too. */
function inLayout(around: SiteData['around']): (page: Page) => Page {
  const shared = keyOf(JSON.stringify(around))
  return (page) =>
    page.layout === 'bare'
      ? page
      : {...page, key: keyOf(page.key, page.layout, JSON.stringify(page.data), shared)}
}

/**
 * Make the pages of the whole journal; `own` are those of its builds. A build that one of them cannot be made with
 * is left out of it, and told of. `next` is waited for before each kind.
 */
export async function pagesOfTheJournal(
  site: SiteData,
  own: readonly KnownPage[],
  {unmade, next}: {unmade: Unmade[]; next: () => Promise<void>},
): Promise<Page[]> {
  const pages: Page[] = []
  for (const kind of ofTheJournal) {
    await next()
    pages.push(...ofTheAble(kind, site, unmade))
  }
  await next()
  return [...pages, ...sitemapPage(site, [...own, ...pages])].map(inLayout(site.around))
}

/** Of these what every word of a build changes. */
export const searchOfTheJournal = (site: SiteData): Page[] =>
  ofTheAble(searchPage, site, []).map(inLayout(site.around))

function ofTheAble(kind: (site: SiteData) => Page[], site: SiteData, unmade: Unmade[]): Page[] {
  const whole = tried(kind, site, () => {})
  if (whole) return whole
  const able = site.builds.filter((one) =>
    tried(kind, {...site, builds: [one]}, (message) => unmade.push({address: addressOf(one), message})),
  )
  const without = {...site, builds: able}
  return tried(kind, without, (message) => unmade.push({address: `/ (${kind.name})`, message})) ?? []
}

const addressOf = ({slug}: SiteBuild) => `/builds/${slug}/`

function tried(
  kind: (site: SiteData) => Page[],
  site: SiteData,
  failed: (message: string) => void,
): Page[] | undefined {
  try {
    return kind(site)
  } catch (error) {
    failed((error as Error).message)
    return undefined
  }
}
