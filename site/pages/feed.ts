import {createHash} from 'node:crypto'
import type {Element} from 'xast'
import {x} from 'xastscript'
import {xmlDocument} from '../markup.ts'
import {type Page, textPage} from '../page.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'
import {kindFacts} from './build-facts.ts'

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
  const feed = x('feed', {xmlns: 'http://www.w3.org/2005/Atom'}, [
    x('title', around.title),
    x('id', idOf(home)),
    x('link', {rel: 'alternate', href: home}),
    x('link', {rel: 'self', href: `${home}feed.xml`}),
    x('updated', atNoon(newest)),
    x('author', [x('name', journal.maker?.value ?? around.title)]),
    ...dated.map(({one, date}) => entry(one, date, home)),
  ])
  return [textPage('/feed.xml', 'Feed', xmlDocument(feed))]
}

function entry({slug, title, build}: SiteBuild, date: string, home: string): Element {
  const address = `${home}builds/${slug}/`
  const summary = build.values.summary?.value
  return x('entry', [
    x('title', title),
    x('id', idOf(address)),
    x('link', {rel: 'alternate', href: address}),
    x('updated', atNoon(date)),
    summary ? x('summary', summary) : undefined,
  ])
}

/** An address where the journal has one; else a name made from it (RFC 9562, version 8), which stays the same too. */
function idOf(address: string): string {
  if (!address.startsWith('/')) return address
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
