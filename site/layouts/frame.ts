import type {Element} from 'hast'
import {h} from 'hastscript'
import {markup, written} from '../html/markup.ts'
import {withPrefix} from '../html/with-prefix.ts'
import type {Layout, PageData} from '../publish/page.ts'
import {head} from './head.ts'
import {navigation} from './navigation.ts'
import type {Surround} from './surround.ts'

/** Wrap a page in the journal's frame: name, ways to the other pages, and the nut line that the page hangs from. */
export function frame(around: Surround): Layout {
  return (data) => {
    const page = h('html', {lang: 'en'}, [head(around, data), body(around, data)])
    return `<!doctype html>\n${markup(withPrefix(page, around.prefix))}\n`
  }
}

function body({title, maker}: Surround, data: PageData & {address: string; content: string}): Element {
  return h('body', [
    h('a.skip', {href: '#Page'}, 'To the page'),
    h('header.site', [
      data.address === '/' ? undefined : h('a.journal', {href: '/'}, title),
      h('nav', {ariaLabel: 'Journal'}, [ways(navigation.above, data.within)]),
    ]),
    h('div.nut-line', {ariaHidden: 'true'}),
    h('main#Page', {tabIndex: -1}, [written(data.content)]),
    h('footer.site', [
      h('nav', {ariaLabel: 'Behind the numbers'}, [ways(navigation.below, data.within)]),
      h('p', [
        maker ? `Built and written by ${maker}. ` : '',
        'Local codes, the machine’s manual and licensed practice come before anything that stands here.',
      ]),
    ]),
  ])
}

function ways(entries: readonly (readonly [string, string])[], within: string | undefined): Element {
  return h(
    'ul',
    entries.map(([href, name]) =>
      h('li', [h('a', {href, ...(href === within ? {ariaCurrent: 'page'} : {})}, name)]),
    ),
  )
}
