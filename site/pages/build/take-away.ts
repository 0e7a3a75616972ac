import type {Element} from 'hast'
import {h} from 'hastscript'
import type {SiteBuild} from '../../site-data.ts'

/** What can be taken away from a build's page: address below it, name, and what it is for. */
const files = [
  ['build.md', 'The dimensions', 'as written in its file'],
  ['plan.json', 'The plan', 'every number computed, for other programs'],
] as const

/** Lead to the files beside a build's page. */
export function takeAway({slug}: SiteBuild): Element {
  return h('section.take-away', [
    h('h2#TakeAway', 'To take away'),
    h(
      'ul',
      files.map(([file, name, what]) =>
        h('li', [h('a', {href: `/builds/${slug}/${file}`}, name), `: ${what}`]),
      ),
    ),
  ])
}
