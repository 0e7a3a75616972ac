import type {Element} from 'hast'
import {h} from 'hastscript'
import type {Change} from '../../plugins/plan/changes.ts'
import {toElements} from '../../plugins/sections/kit.ts'
import {table} from '../../plugins/sections/kit-table.ts'
import {fractions} from '../../plugins/sections/measures.ts'
import {keyOf} from '../cache.ts'
import {markup, withPrefix} from '../markup.ts'
import type {Page} from '../page.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'

/** Write, for each build that was copied from another, what differs from that one. */
export function changesPages({builds, around}: SiteData): Page[] {
  return builds
    .filter(({relatives: {original}}) => original && original.changes.length > 0)
    .map((one) => ({
      address: `/builds/${one.slug}/changes/`,
      layout: 'frame',
      key: keyOf('changes', one.key),
      data: {
        title: `${one.title}: what differs`,
        describes: `What ${one.title} changes on the build that it was copied from.`,
        within: '/',
        unlisted: one.isDraft,
      },
      content: () => markup(withPrefix(content(one), around.prefix)),
    }))
}

function content({slug, title, relatives}: SiteBuild): Element {
  const {original} = relatives
  const changes = original?.changes ?? []
  // What the first one left open is an addition; a long list of those would bury what was really changed.
  const changed = changes.filter(({was, is}) => was !== undefined && is !== undefined)
  const others = changes.filter((change) => !changed.includes(change))
  const there = original?.title ?? ''
  return h('article.prose', [
    h('header.page-head', [
      h('h1', 'What differs'),
      h('p', [
        h('a', {href: `/builds/${slug}/`}, title),
        ' was copied from ',
        h('a', {href: `/builds/${original?.slug}/`}, there),
        '.',
      ]),
    ]),
    ...(changed.length > 0 ? [h('h2#changed', 'Changed'), ...listed(`Changed on ${there}`, changed)] : []),
    ...(others.length > 0
      ? [h('h2#one-alone', 'Given in one of the two alone'), ...listed('Left open in the other', others)]
      : []),
  ])
}

function listed(caption: string, changes: readonly Change[]) {
  return toElements([
    table({
      caption,
      columns: [{head: 'Key'}, {head: 'There'}, {head: 'Here'}],
      rows: changes.map(({path, was, is}) => [
        {type: 'inlineCode', value: path},
        fractions(was ?? 'not given'),
        fractions(is ?? 'not given'),
      ]),
    }),
  ])
}
