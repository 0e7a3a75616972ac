import {x} from 'xastscript'
import {xmlDocument} from '../kit/markup.ts'
import {type KnownPage, type Page, textPage} from '../kit/page.ts'
import type {SiteData} from '../kit/site-data.ts'

/** Write the list of pages for search engines (sitemaps.org, protocol 0.9), which only whole addresses may stand in. */
export function sitemapPage({around: {origin = '', prefix}}: SiteData, pages: readonly KnownPage[]): Page[] {
  const addresses = pages
    .filter(({layout, data}) => layout !== 'bare' && !data.unlisted)
    .map(({address}) => origin + prefix + address.slice(1))
    .sort()
  const list = x(
    'urlset',
    {xmlns: 'http://www.sitemaps.org/schemas/sitemap/0.9'},
    addresses.map((address) => x('url', [x('loc', address)])),
  )
  return [textPage('/sitemap.xml', 'Pages', xmlDocument(list))]
}
