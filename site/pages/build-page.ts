import {h} from 'hastscript'
import {markup, written} from '../html/markup.ts'
import {withPrefix} from '../html/with-prefix.ts'
import type {Page} from '../publish/page.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'
import {buildHead} from './build/build-head.ts'
import {contents} from './build/contents.ts'
import {recordings} from './build/recordings.ts'
import {takeAway} from './build/take-away.ts'
import {whileWriting} from './build/while-writing.ts'

/** Write the page of each build. Its body was made before and is kept; nothing here depends on other builds. */
export function buildPages({builds, around}: SiteData): Page[] {
  return builds.map((one) => ({
    address: `/builds/${one.slug}/`,
    layout: 'frame',
    key: one.key,
    data: {
      title: one.title,
      within: '/',
      ...(one.build.values.summary ? {describes: one.build.values.summary.value} : {}),
      ...(one.isDraft ? {unlisted: true as const} : {}),
    },
    content: () => content(one, around),
  }))
}

function content(one: SiteBuild, {prefix, isWriting}: SiteData['around']): string {
  const page = h('article.build', [
    buildHead(one),
    isWriting ? whileWriting(one) : undefined,
    contents(one.made.headings),
    h('div.prose', [written(one.made.html)]),
    recordings(one),
    takeAway(one),
  ])
  return markup(withPrefix(page, prefix))
}
