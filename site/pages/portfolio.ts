import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import {type Page, pageOf, textPage} from '../page.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'
import {kindFacts} from './build-facts.ts'
import {hangingRow} from './hanging-row.ts'
import {card} from './portfolio-card.ts'
import {controls} from './portfolio-controls.ts'
import {unreadFiles} from './while-writing.ts'

/** Write the portfolio: all instruments hung from one nut line, and a card for each. */
export function portfolioPage({around, journal, builds, unread}: SiteData): Page[] {
  const units = journal.units?.value ?? 'in'
  const count = `${builds.length} ${builds.length === 1 ? 'instrument' : 'instruments'}`
  const played = builds.filter((one) => kindFacts(one).isPlayedWell).length
  const describes = `${count}${played > 0 ? `, ${played} of them played well` : ''}.`
  const content = [
    h('header.page-head', [h('h1', around.title), builds.length > 0 ? h('p', describes) : undefined]),
    ...(around.isWriting ? unreadFiles(unread) : []),
    ...hangingRow(builds, units),
    ...(builds.length === 0
      ? [empty()]
      : [...narrowing(builds, units, around), h('ul.cards', builds.map(card))]),
  ]
  const data = {title: around.title, describes, within: '/', scripts: ['portfolio']}
  return [pageOf('/', data, content, around.prefix)]
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
      h('code', 'npm run new -- needle-box'),
      ' starts it.',
    ]),
  ])
}

/** Write the words of every build, for the portfolio's search to fetch once somebody searches. */
export function searchPage({builds}: SiteData): Page[] {
  const words = Object.fromEntries(builds.map(({slug, made}) => [slug, made.words]))
  return [textPage('/search.json', 'Words', `${JSON.stringify(words)}\n`)]
}
