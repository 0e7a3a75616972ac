import {createHash} from 'node:crypto'
import {kindFacts} from '../html/build-facts.ts'
import {xmlText} from '../html/xml-text.ts'
import {type Page, textPage} from '../publish/page.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'

/** Write the feed (Atom, RFC 4287) of builds that carry a date, newest first. Dates are those of the files. */
export function feedPage({around, builds, journal}: SiteData): Page[] {
  const home = (around.origin ?? '') + around.prefix
  const dated = builds.flatMap((one) => {
    const {date} = kindFacts(one)
    return date ? [{one, date}] : []
  })
  const newest =
    dated
      .map(({date}) => date)
      .sort()
      .at(-1) ?? '1970-01-01'
  const author = journal.maker?.value ?? around.title
  const text = `<?xml version="1.0" encoding="utf-8"?>
<feed xmlns="http://www.w3.org/2005/Atom">
  <title>${xmlText(around.title)}</title>
  <id>${idOf(home)}</id>
  <link rel="alternate" href="${xmlText(home)}"/>
  <link rel="self" href="${xmlText(`${home}feed.xml`)}"/>
  <updated>${atNoon(newest)}</updated>
  <author><name>${xmlText(author)}</name></author>
${dated.map(({one, date}) => entry(one, date, home)).join('')}</feed>
`
  return [textPage('/feed.xml', 'Feed', text)]
}

function entry({slug, title, build}: SiteBuild, date: string, home: string): string {
  const address = xmlText(`${home}builds/${slug}/`)
  const summary = build.values.summary?.value
  return `  <entry>
    <title>${xmlText(title)}</title>
    <id>${idOf(`${home}builds/${slug}/`)}</id>
    <link rel="alternate" href="${address}"/>
    <updated>${atNoon(date)}</updated>${summary ? `\n    <summary>${xmlText(summary)}</summary>` : ''}
  </entry>
`
}

/** An address where the journal has one; else a name made from it (RFC 9562, version 8), which stays the same too. */
function idOf(address: string): string {
  if (!address.startsWith('/')) return xmlText(address)
  const hex = createHash('sha256').update(address).digest('hex')
  const parts = [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `8${hex.slice(13, 16)}`,
    `8${hex.slice(17, 20)}`,
    hex.slice(20, 32),
  ]
  return `urn:uuid:${parts.join('-')}`
}

const atNoon = (date: string) => `${date}T12:00:00Z`
