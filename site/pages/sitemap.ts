import {xmlText} from '../html/xml-text.ts'
import {type Page, textPage} from '../publish/page.ts'
import type {SiteData} from '../site-data.ts'

/** Write the list of pages for search engines (sitemaps.org, protocol 0.9), which only whole addresses may stand in. */
export function sitemapPage({around: {origin = '', prefix}}: SiteData, pages: readonly Page[]): Page[] {
  const addresses = pages
    .filter(({layout, data}) => layout !== 'bare' && !data.unlisted)
    .map(({address}) => `  <url><loc>${xmlText(origin + prefix + address.slice(1))}</loc></url>\n`)
    .sort()
  const text = `<?xml version="1.0" encoding="utf-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${addresses.join('')}</urlset>\n`
  return [textPage('/sitemap.xml', 'Pages', text)]
}
