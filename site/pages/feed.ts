import {createHash} from 'node:crypto'
import {h} from 'hastscript'
import type {Element} from 'xast'
import {x} from 'xastscript'
import {markup, xmlDocument} from '../kit/markup.ts'
import {type Page, textPage} from '../kit/page.ts'
import {type Picture, versionOf} from '../kit/picture.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'
import {kindFacts} from './build-facts.ts'

/** Days told of, the newest; who reads a feed has read what is older. */
const mostDays = 40

/**
 * Write the feed (Atom, RFC 4287) of builds that carry a date, and of the days at the bench with their pictures,
 * newest first. Dates are those of the files.
 */
export function feedPage({around, builds, journal}: SiteData): Page[] {
  const home = (around.origin ?? '') + around.prefix
  const dated = builds.flatMap((one) => {
    const {date} = kindFacts(one)
    return date ? [{one, date}] : []
  })
  const days = builds
    .flatMap((one) => daysOf(one))
    .sort((a, b) => (a.iso < b.iso ? 1 : a.iso > b.iso ? -1 : 0))
    .slice(0, mostDays)
  const newest = [...dated.map(({date}) => date), ...days.map(({iso}) => iso)].sort().at(-1) ?? '1970-01-01'
  const feed = x('feed', {xmlns: 'http://www.w3.org/2005/Atom'}, [
    x('title', around.title),
    x('id', idOf(home)),
    x('link', {rel: 'alternate', href: home}),
    x('link', {rel: 'self', href: `${home}feed.xml`}),
    x('updated', atNoon(newest)),
    x('author', [x('name', journal.maker?.value ?? around.title)]),
    ...[
      ...dated.map(({one, date}) => ({date, is: entry(one, date, home)})),
      ...days.map((day) => ({date: day.iso, is: dayEntry(day, home)})),
    ]
      .sort((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0))
      .map(({is}) => is),
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

/** A day of a build, where its page has it, and its pictures. */
interface BenchDay {
  one: SiteBuild
  iso: string
  title: string
  anchor: string
  pictures: readonly {picture: Picture; alt: string}[]
}

/** List the days of a build that its page has a heading of; two of one day are two. */
function daysOf(one: SiteBuild): BenchDay[] {
  const {build, made, pictures} = one
  const left = [...made.headings]
  return build.days.flatMap(({iso, title, place}, at) => {
    const heading = left.findIndex((each) => each.title.startsWith(iso))
    if (heading < 0) return []
    const [{id}] = left.splice(heading, 1) as [(typeof left)[number]]
    const until = build.days[at + 1]?.place.line ?? Number.POSITIVE_INFINITY
    const own = build.links.flatMap(({target, alt, isPicture, place: {line}}) => {
      const picture = isPicture && line > place.line && line < until ? pictures.get(target) : undefined
      return picture ? [{picture, alt: alt ?? ''}] : []
    })
    return [{one, iso, title, anchor: id, pictures: own}]
  })
}

function dayEntry({one, iso, title, anchor, pictures}: BenchDay, home: string): Element {
  const address = `${home}builds/${one.slug}/#${encodeURIComponent(anchor)}`
  const shown = pictures.map(({picture, alt}) => {
    const {width, height} = picture
    const src = new URL(versionOf(picture, picture.widths[0]!, 'jpeg').slice(1), `http://feed.invalid/`)
      .pathname
    return h('p', [h('img', {src: `${home}${src.slice(1)}`, alt, width, height})])
  })
  return x('entry', [
    x('title', title ? `${one.title}: ${title}` : `${one.title}: ${iso}`),
    x('id', idOf(address)),
    x('link', {rel: 'alternate', href: address}),
    x('updated', atNoon(iso)),
    shown.length > 0 ? x('content', {type: 'html'}, markup(shown)) : undefined,
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
