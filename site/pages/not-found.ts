import {h} from 'hastscript'
import {type Page, pageOf} from '../kit/page.ts'
import type {SiteData} from '../kit/site-data.ts'

/** Write the page for addresses that lead nowhere. */
export function notFoundPage({around}: SiteData): Page[] {
  const content = [
    h('header.page-head', [
      h('h1', 'Nothing hangs here'),
      h('p', 'This address leads to no page of the journal.'),
    ]),
    h('div.prose', [
      h('p', [
        'A build that was renamed has moved; ',
        h('a', {href: '/'}, 'the list of builds'),
        ' has them all.',
      ]),
    ]),
  ]
  return [pageOf('/404.html', {title: 'Nothing here', unlisted: true}, content, around.prefix)]
}
