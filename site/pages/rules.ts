import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import {rules} from '../../plugins/checks/all.ts'
import {type Page, pageOf} from '../kit/page.ts'
import type {SiteData} from '../kit/site-data.ts'

const groups = [
  ['fault', 'Would not work as drawn', 'Do not cut yet.'],
  ['warning', 'Look again', 'It may be meant, and is often a slip.'],
  ['remark', 'Good to know', 'Said quietly; nothing has to change.'],
  [
    'error',
    'Cannot be read',
    'Nothing can be computed until these are mended; a journal with one is not published.',
  ],
] as const

/** Write the page of rules: every check by how much it matters, what it looks for, why, and how to mend it. */
export function rulesPage({around}: SiteData): Page[] {
  const describes = 'Everything that is looked at before you cut: what, why, and how to mend it.'
  const content = [
    h('header.page-head', [h('h1', 'What is checked'), h('p', describes)]),
    h('div.prose', [
      h('p', [
        'Once an instrument is strung up, what would have been a fault of its design is a remark: it exists, and it plays. A build file can accept a rule, with the reason: ',
        h('code', 'accept: {rule-name: why}'),
        '.',
      ]),
      ...groups.flatMap(group),
    ]),
  ]
  return [pageOf('/rules/', {title: 'What is checked', describes, within: '/rules/'}, content, around.prefix)]
}

function group([severity, title, says]: (typeof groups)[number]): ElementContent[] {
  const rows = rules.filter((rule) => rule.severity === severity)
  if (rows.length === 0) return []
  return [h('h2', title), h('p', says), h('div.rules.wide', rows.map(article))]
}

function article({name, what, why, mend}: (typeof rules)[number]): ElementContent {
  return h(`article.rule#${name}`, [
    h('h3', what.replace(/\.$/, '')),
    h('p', why),
    h('p', mend),
    h('p.source', [h('code', name)]),
  ])
}
