import type {Page} from '../page.ts'
import type {SiteData} from '../site-data.ts'
import {benchPages} from './bench.ts'
import {buildFilePages, buildPages, planPages} from './build.ts'
import {carePages} from './care.ts'
import {feedPage} from './feed.ts'
import {notFoundPage} from './not-found.ts'
import {plannedAndMeasuredPage} from './planned-and-measured.ts'
import {portfolioPage, searchPage} from './portfolio.ts'
import {rackPage} from './rack.ts'
import {rulesPage} from './rules.ts'
import {sideBySidePage} from './side-by-side.ts'
import {sitemapPage} from './sitemap.ts'
import {sourcesPage} from './sources.ts'
import {woodsPage} from './woods.ts'

/** Pages of single builds, each kind a function from the journal to its pages. */
const ofBuilds = [buildPages, planPages, buildFilePages, carePages, benchPages]

/** Pages of the whole journal. */
const ofTheJournal = [
  portfolioPage,
  searchPage,
  sideBySidePage,
  rackPage,
  plannedAndMeasuredPage,
  rulesPage,
  woodsPage,
  sourcesPage,
  feedPage,
  notFoundPage,
]

/** Make the pages of single builds: what each is made of depends on that build alone. */
export const pagesOfBuilds = (site: SiteData): Page[] => ofBuilds.flatMap((kind) => kind(site))

/** Make the pages of the whole journal; `own` are those of its builds. */
export function pagesOfTheJournal(site: SiteData, own: readonly Page[]): Page[] {
  const pages = ofTheJournal.flatMap((kind) => kind(site))
  return [...pages, ...sitemapPage(site, [...own, ...pages])]
}
