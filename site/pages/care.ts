import {h} from 'hastscript'
import {markup} from '../html/markup.ts'
import {keyOf} from '../html/page-of.ts'
import {withPrefix} from '../html/with-prefix.ts'
import type {Page} from '../publish/page.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'
import {careFacts} from './care/care-facts.ts'
import {careStrings} from './care/care-strings.ts'
import {changingStrings} from './care/changing-strings.ts'

/** Write the sheet that goes with each instrument to whoever plays it. */
export function carePages({builds, around}: SiteData): Page[] {
  return builds.map((one) => ({
    address: `/builds/${one.slug}/care/`,
    layout: 'sheet',
    key: keyOf('care', one.key),
    data: {
      title: `${one.title}: strings and care`,
      describes: `What ${one.title} is strung with, how it is set up, and how to keep it.`,
      within: `/builds/${one.slug}/`,
      ...(one.isDraft ? {unlisted: true as const} : {}),
    },
    content: () => markup(withPrefix(care(one, around.maker), around.prefix)),
  }))
}

function care(one: SiteBuild, maker: string | undefined) {
  return h('article.care', [
    h('header.page-head', [
      h('h1', one.title),
      one.build.values.summary ? h('p', one.build.values.summary.value) : undefined,
    ]),
    h('div.prose', [...careStrings(one), ...careFacts(one, maker), ...changingStrings(one)]),
  ])
}
