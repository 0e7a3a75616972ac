import type {Page} from '../publish/page.ts'
import type {SiteData} from '../site-data.ts'
import {buildFilePages} from './build-md.ts'
import {buildPages} from './build-page.ts'
import {carePages} from './care.ts'
import {feedPage} from './feed.ts'
import {notFoundPage} from './not-found.ts'
import {planPages} from './plan-json.ts'
import {plannedAndMeasuredPage} from './planned-and-measured.ts'
import {portfolioPage} from './portfolio.ts'
import {rackPage} from './rack.ts'
import {rulesPage} from './rules.ts'
import {searchPage} from './search.ts'
import {sideBySidePage} from './side-by-side.ts'
import {sitemapPage} from './sitemap.ts'
import {sourcesPage} from './sources.ts'
import {woodsPage} from './woods.ts'

/** Every kind of page, each a function from the journal to its pages; those of single builds first. */
const kinds: readonly ((site: SiteData) => Page[])[] = [
  buildPages,
  planPages,
  buildFilePages,
  carePages,
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

/** Make every page of the site. */
export function allPages(site: SiteData): Page[] {
  const pages = kinds.flatMap((kind) => kind(site))
  return [...pages, ...sitemapPage(site, pages)]
}
