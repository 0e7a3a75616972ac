import {h} from 'hastscript'
import {source, toElements} from '../../plugins/sections/kit.ts'
import {table} from '../../plugins/sections/kit-table.ts'
import {type Page, pageOf} from '../kit/page.ts'
import type {SiteData} from '../kit/site-data.ts'
import {lumberTables, shopTables, soundTables} from './source-tables.ts'
import {stringTables} from './string-tables.ts'

/** Write the page of the tables that the computations use, besides woods, with where they come from. */
export function sourcesPage({around}: SiteData): Page[] {
  const describes = 'The tables that the numbers come from, and where they come from in turn.'
  const content = [
    h('header.page-head', [h('h1', 'Sources'), h('p', describes)]),
    h('div.prose', [
      h('p', [
        'Woods have ',
        h('a', {href: '/woods/'}, 'a page of their own'),
        '. What no document stands behind is marked ',
        h('em', 'common practice, no source'),
        '; what could not be looked up again, ',
        h('em', 'from memory'),
        '.',
      ]),
      ...[...stringTables, ...shopTables, ...lumberTables, ...soundTables].flatMap((each) => [
        h('h2', each.title),
        ...toElements([table(each.table), ...(each.source ? [source(each.source)] : [])]),
      ]),
    ]),
  ]
  return [pageOf('/sources/', {title: 'Sources', describes, within: '/sources/'}, content, around.prefix)]
}
