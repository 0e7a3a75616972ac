import type {Element} from 'hast'
import {h} from 'hastscript'
import type {MadeBuild} from '../../site-data.ts'

/** List what is on the page, to go there at once; a short page needs none. */
export function contents(headings: MadeBuild['headings']): Element | undefined {
  const shown = headings.filter(({depth}) => depth <= 2)
  if (shown.length < 4) return undefined
  return h('details.contents', [
    h('summary', 'On this page'),
    h('nav', {ariaLabel: 'On this page'}, [
      h(
        'ul',
        shown.map(({id, title}) => h('li', [h('a', {href: `#${id}`}, title)])),
      ),
    ]),
  ])
}
