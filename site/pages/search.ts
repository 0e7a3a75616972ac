import {textPage} from '../html/page-of.ts'
import type {Page} from '../publish/page.ts'
import type {SiteData} from '../site-data.ts'

/** Write the words of every build, for the portfolio's search to fetch once somebody searches. */
export function searchPage({builds}: SiteData): Page[] {
  const words = Object.fromEntries(builds.map(({slug, made}) => [slug, made.words]))
  return [textPage('/search.json', 'Words', `${JSON.stringify(words)}\n`)]
}
