import type {Element} from 'hast'
import {h} from 'hastscript'
import {markup, withPrefix} from '../kit/markup.ts'
import type {Layout} from '../kit/page.ts'
import type {Surround} from '../kit/site-data.ts'
import {head} from './head.ts'

/** The pages that every page leads to, in order: above the page, and below it. */
const navigation = {
  above: [
    ['/now/', 'Now'],
    ['/side-by-side/', 'Side by side'],
    ['/rack/', 'Rack'],
  ],
  below: [
    ['/try/', 'Try a change'],
    ['/planned-and-measured/', 'Planned and measured'],
    ['/rules/', 'What is checked'],
    ['/woods/', 'Woods'],
    ['/sources/', 'Sources'],
    ['/feed.xml', 'Feed'],
  ],
} as const satisfies Record<string, readonly (readonly [string, string])[]>

/** Wrap a page in the journal's frame: name, ways to the other pages, and the nut line that the page hangs from. */
export function frame(around: Surround): Layout {
  // What stands above and below is the same on a thousand pages: it is written once for each way it can be.
  const above = once((within, isHome) => writtenTop(around, within, isHome))
  const below = once((within) => markup(withPrefix(bottom(around, within), around.prefix)))
  return (data) => {
    const within = data.within ?? ''
    const start = markup(withPrefix(head(around, data), around.prefix))
    const page = `<main id="Page" tabindex="-1">${data.content}</main>`
    const whole = above(within, data.address === '/') + page + below(within, false)
    return `<!doctype html>\n<html lang="en">${start}<body>${whole}</body></html>\n`
  }
}

type Part = (within: string, isHome: boolean) => string

function once(write: Part): Part {
  const kept = new Map<string, string>()
  return (within, isHome) => {
    const key = `${within} ${isHome}`
    const part = kept.get(key) ?? write(within, isHome)
    kept.set(key, part)
    return part
  }
}

function writtenTop({title, prefix}: Surround, within: string, isHome: boolean): string {
  const parts = [
    h('a.skip', {href: '#Page'}, 'To the page'),
    h('header.site', [
      isHome ? undefined : h('a.journal', {href: '/'}, title),
      h('nav', {ariaLabel: 'Journal'}, [ways(navigation.above, within)]),
    ]),
    h('div.nut-line', {ariaHidden: 'true'}),
  ]
  return markup(withPrefix({type: 'root', children: parts}, prefix))
}

function bottom({maker}: Surround, within: string): Element {
  return h('footer.site', [
    h('nav', {ariaLabel: 'Behind the numbers'}, [ways(navigation.below, within)]),
    h('p', [
      maker ? `Built and written by ${maker}. ` : '',
      'Local codes, the machine’s manual and licensed practice come before anything that stands here.',
    ]),
  ])
}

function ways(entries: readonly (readonly [string, string])[], within: string): Element {
  return h(
    'ul',
    entries.map(([href, name]) =>
      h('li', [h('a', {href, ariaCurrent: href === within ? 'page' : undefined}, name)]),
    ),
  )
}
