import {kindFacts} from '../html/kind-facts.ts'
import {textPage} from '../html/page-of.ts'
import {xmlText} from '../html/xml-text.ts'
import type {Page} from '../publish/page.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'

/** Write the feed (Atom, RFC 4287) of builds that carry a date, newest first. Dates are those of the files. */
export function feedPage({around, builds, journal}: SiteData): Page[] {
  const home = (around.origin ?? 'https://journal.invalid') + around.prefix
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
  <id>${xmlText(home)}</id>
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
    <id>${address}</id>
    <link rel="alternate" href="${address}"/>
    <updated>${atNoon(date)}</updated>${summary ? `\n    <summary>${xmlText(summary)}</summary>` : ''}
  </entry>
`
}

const atNoon = (date: string) => `${date}T12:00:00Z`
