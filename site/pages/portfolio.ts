import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import {asCalled} from '../kit/called.ts'
import {type Page, pageOf, pageShowing, textPage} from '../kit/page.ts'
import {keyOfShown} from '../kit/shown.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'
import {kindFacts} from './build-facts.ts'
import {hangingRow, type RowView, rowView} from './hanging-row.ts'
import {card} from './portfolio-card.ts'
import {controls} from './portfolio-controls.ts'
import {unreadFiles} from './while-writing.ts'

/** As many as a line at a workshop loads at once; the pages that follow have the rest. */
const onOnePage = 36

/** Write the portfolio: instruments hung from one nut line, and a card for each; a page for every so many. */
export function portfolioPage(site: SiteData): Page[] {
  const {builds} = site
  const count = Math.max(1, Math.ceil(builds.length / onOnePage))
  const view = rowView(builds)
  return Array.from({length: count}, (_, at) => {
    const shown = builds.slice(at * onOnePage, (at + 1) * onOnePage)
    return at === 0
      ? firstPage(site, shown, {count, view})
      : laterPage(site, shown, {page: at + 1, count, view})
  })
}

function firstPage(site: SiteData, shown: readonly SiteBuild[], {count, view}: Row): Page {
  const {around, journal, builds, unread} = site
  const units = journal.units?.value ?? 'in'
  const all = `${builds.length} ${builds.length === 1 ? 'instrument' : 'instruments'}`
  const played = builds.filter((one) => kindFacts(one).isPlayedWell).length
  const describes = `${all}${played > 0 ? `, ${played} of them played well` : ''}.`
  const content = [
    h('header.page-head', [h('h1', around.title), builds.length > 0 ? h('p', describes) : undefined]),
    ...(around.isWriting ? unreadFiles(unread) : []),
    ...hangingRow(shown, view, units),
    ...(builds.length === 0
      ? [empty()]
      : [...narrowing(builds, units, around), h('ul.cards', shown.map(card)), ...pages(1, count)]),
  ]
  const data = {title: around.title, describes, within: '/', scripts: ['portfolio']}
  return pageOf('/', data, content, around.prefix)
}

/** How many pages there are, and the view that holds the instruments of all of them. */
interface Row {
  count: number
  view: RowView
}

/** In a journal of thousands there are hundreds of these, and a save changes one. */
function laterPage(
  {around, journal}: SiteData,
  shown: readonly SiteBuild[],
  {page, count, view}: Row & {page: number},
): Page {
  const title = `Builds, page ${page} of ${count}`
  const units = journal.units?.value ?? 'in'
  const content = () => [
    h('header.page-head', [
      h('h1', title),
      h('p', [
        'Newest first. ',
        h('a', {href: '/'}, 'The first page'),
        ' can search and narrow all of them.',
      ]),
    ]),
    ...hangingRow(shown, view, units),
    h('ul.cards', shown.map(card)),
    ...pages(page, count),
  ]
  const shows = [shown.map(keyOfShown), view, units, page, count]
  return pageShowing(addressOf(page), {title, within: '/'}, {shows, content, prefix: around.prefix})
}

const addressOf = (page: number) => (page === 1 ? '/' : `/page/${page}/`)

/** Lead to the pages before and after. */
function pages(here: number, count: number): ElementContent[] {
  if (count === 1) return []
  const numbers = Array.from({length: count}, (_, at) => at + 1)
  const link = (page: number) =>
    h('a', {href: addressOf(page), ariaCurrent: page === here ? 'page' : undefined}, String(page))
  return [
    h('nav.pages', {ariaLabel: 'Pages of builds'}, [
      h(
        'ul',
        numbers.map((page) => h('li', [link(page)])),
      ),
    ]),
  ]
}

/** The controls come out of their template by a script that stands right after them, before anything is shown. */
function narrowing(
  builds: readonly SiteBuild[],
  units: 'in' | 'mm',
  {assets}: SiteData['around'],
): ElementContent[] {
  return builds.length > 1 ? [controls(builds, units), h('script', {src: assets.unfold})] : []
}

function empty() {
  return h('div.prose', [
    h('p', [
      'No build yet. A file ',
      h('code', 'builds/needle-box.md'),
      ' with a title, a box, a scale length and strings is a whole one; ',
      h('code', asCalled('npm run new -- needle-box')),
      ' starts it.',
    ]),
  ])
}

/** Write what every build is narrowed and sorted by, in the portfolio's order, for its script to fetch once. */
export function listPage({builds}: SiteData): Page[] {
  const list = builds.map((one, at) => {
    const {strings, scaleMm, frets, play, join, status, tags, isPlayedWell} = kindFacts(one)
    return {
      slug: one.slug,
      title: one.title,
      page: Math.floor(at / onOnePage) + 1,
      scale: scaleMm && Number(scaleMm.toFixed(1)),
      has: {
        strings: strings?.toString(),
        frets,
        play,
        join,
        status,
        tags: tags.length > 0 ? tags : undefined,
        played: isPlayedWell ? 'played well' : undefined,
      },
    }
  })
  return [textPage('/list.json', 'Builds', `${JSON.stringify(list)}\n`)]
}

/** Write the words of every build, for the portfolio's search to fetch once somebody searches. */
export function searchPage({builds}: SiteData): Page[] {
  const words = Object.fromEntries(builds.map(({slug, made}) => [slug, made.words]))
  return [textPage('/search.json', 'Words', `${JSON.stringify(words)}\n`)]
}
