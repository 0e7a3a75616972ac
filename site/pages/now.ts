import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import {isMade} from '../../plugins/build-file/schema/schema.ts'
import type {Lot} from '../../plugins/plan/kit/context.ts'
import {waitingOn} from '../../plugins/plan/work/waiting.ts'
import {toElements} from '../../plugins/sections/kit.ts'
import {table} from '../../plugins/sections/kit-table.ts'
import {foundInWords, nextInWords, stillToGet, waitingInWords} from '../../plugins/words/state.ts'
import {type Page, pageOf} from '../kit/page.ts'
import {partOf} from '../kit/shown.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'

/** Write the page of what is open: each build's next step, what glues or dries until when, and what is still to get. */
export function nowPage({around, builds, rack: {day, lots}}: SiteData): Page[] {
  const describes =
    'What is open on the bench: the next step of each build, what glues or dries, and what it lacks.'
  const open = builds.filter(isOpen)
  const among = {among: day ?? '', prefix: around.prefix}
  const [ideas, begun] = [open.filter(isIdea), open.filter((one) => !isIdea(one))]
  const content = [
    h('header.page-head', [
      h('h1', 'On the bench now'),
      h('p', [
        'Open builds',
        day && [' as of ', h('time', {dateTime: day}, day), ', the last date in the journal'],
        '.',
      ]),
    ]),
    h('div.prose', [
      ...(begun.length > 0
        ? begun.map((one) => openOf(one, {...among, make: () => openBuild(one, day)}))
        : [
            h(
              'p',
              'Nothing is on the bench. A build is open from the day it is started until it is strung up.',
            ),
          ]),
      ...(ideas.length > 0
        ? [
            h('h2', 'Ideas'),
            ...ideas.map((one) => ideaOf(one, {...among, make: () => openBuild(one, day, 'h3')})),
          ]
        : []),
      ...toGet(open, lots),
    ]),
  ]
  return [pageOf('/now/', {title: 'On the bench now', describes, within: '/now/'}, content, around.prefix)]
}

const isOpen = ({build: {values}}: SiteBuild): boolean => !values.finished && !isMade(values.status?.value)

const isIdea = ({build: {values}}: SiteBuild): boolean =>
  values.status?.value === 'idea' || (!values.started && !values.status)

const [openOf, ideaOf] = [partOf(), partOf()]

function openBuild(one: SiteBuild, day: string | undefined, heading: 'h2' | 'h3' = 'h2'): Element[] {
  const {slug, title, plan, problems, build} = one
  const next = nextInWords(plan)
  const found = foundInWords(problems)
  const waits = day === undefined ? [] : waitingOn(day, plan.work ?? [], build.days)
  const done = plan.work?.filter(({isDone}) => isDone).length ?? 0
  return [
    h(heading, [h('a', {href: `/builds/${slug}/`}, title)]),
    h('p', [
      ...(next
        ? [
            'Next: ',
            h('a', {href: `/builds/${slug}/${next.is === 'step' ? 'bench/' : '#setting-up'}`}, next.says),
            '. ',
          ]
        : []),
      plan.work ? `${done} of ${plan.work.length} steps done. ` : undefined,
      ...(found ? ['Look again: ', h('a', {href: `/builds/${slug}/#before-you-cut`}, found), '.'] : []),
    ]),
    ...(waits.length > 0
      ? [
          h('p', 'Left alone, in whole days from the day written:'),
          h(
            'ul',
            waits.map((wait) => h('li', waitingInWords(wait, plan))),
          ),
        ]
      : []),
  ]
}

/** List what all open builds lack, once. */
function toGet(open: readonly SiteBuild[], stands: readonly Lot[]): ElementContent[] {
  const lacking = new Map<string, {count: number; by: SiteBuild[]; atHand?: string | undefined}>()
  for (const one of open)
    for (const {item, count, atHand} of stillToGet(one.plan)) {
      const known = lacking.get(item) ?? {count: 0, by: []}
      const here = stands.find(({id}) => id === atHand)
      lacking.set(item, {
        count: known.count + count,
        by: [...known.by, one],
        atHand: here ? `${here.id} on the rack has ${here.count}` : known.atHand,
      })
    }
  if (lacking.size === 0) return []
  const rows = [...lacking].sort(([a], [b]) => (a < b ? -1 : 1))
  const lacks = table({
    caption: 'What their files ask for, and neither paid for nor took from the rack',
    columns: [{head: 'What'}, {head: 'How many', align: 'right'}, {head: 'For'}],
    rows: rows.map(([item, {count, by, atHand}]) => [
      item,
      String(count),
      [by.map(({title}) => title).join(', '), atHand].filter(Boolean).join('; '),
    ]),
  })
  return [h('h2', 'To get, for all of them'), ...toElements([lacks])]
}
