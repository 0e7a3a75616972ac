import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import {isMade} from '../../plugins/build-file/schema/schema.ts'
import {lengthOf, withFractions} from '../kit/markup.ts'
import {showPicture} from '../kit/picture.ts'
import type {SiteBuild} from '../kit/site-data.ts'
import {kindFacts, said} from './build-facts.ts'
import {drawnCover} from './drawn-cover.ts'

/** Open a build's page: its name, a sentence, and what it is at a glance. */
export function buildHead(one: SiteBuild, ask: string | undefined): Element {
  const summary = one.build.values.summary?.value
  return h('header.page-head', [
    cover(one),
    h('h1', one.title),
    summary ? h('p', withFractions(summary)) : undefined,
    heard(one),
    one.isDraft ? h('p.draft', 'Draft: not on the published site') : undefined,
    h(
      'dl.at-a-glance',
      glance(one, ask).map(([name, what]) => h('div', [h('dt', name), h('dd', what)])),
    ),
  ])
}

/** What its player said of it last. */
function heard({build}: SiteBuild): Element | undefined {
  const said = build.values.played?.at(-1)?.remark?.value
  return said ? h('p.heard', `“${said}”`) : undefined
}

/** Its photograph, or else the instrument as it is drawn from its dimensions. */
function cover(one: SiteBuild): Element | undefined {
  if (one.cover)
    return h('figure.cover', [showPicture(one.cover, one.title, '(min-width: 64rem) 44rem, 100vw')])
  const drawn = drawnCover(one, `${one.title}, drawn`)
  return drawn && h('figure.cover.as-planned', [drawn, h('figcaption', 'Drawn to scale')])
}

function glance(one: SiteBuild, ask: string | undefined): [string, ElementContent[]][] {
  const {plan, build} = one
  const facts = kindFacts(one)
  const joins =
    facts.join && {'on top': 'neck on top', through: 'neck through', end: 'neck at the end'}[facts.join]
  const box = [said(one, 'box.wood'), joins].filter(Boolean).join(', ')
  const plays = [facts.play, facts.frets, facts.isPlayedWell ? 'played well' : undefined]
    .filter(Boolean)
    .join(', ')
  const strings = plan.strings?.flatMap(({note, gauge}, at): ElementContent[] => [
    ...(at > 0 ? [text(', ')] : []),
    h('span.string', gauge ? `${note} ${gauge}` : note),
  ])
  const rows: [string, ElementContent[] | string | undefined][] = [
    ['Scale length', facts.scaleMm ? lengthOf(facts.scaleMm, plan) : undefined],
    ['Strings, from the bass side', strings],
    ['Box', box],
    ['Plays', plays],
    // What is for sale once it is made says so in the place of that.
    ['Status', isForSale(one) && isMade(facts.status) ? undefined : facts.status],
    ['For sale', forSale(one, ask)],
    ['Worked on', days(build.values.started?.iso, build.values.finished?.iso)],
  ]
  return rows.flatMap(([name, what]) => {
    const shown = typeof what === 'string' ? (what ? [text(what)] : []) : (what ?? [])
    return shown.length > 0 ? [[name, shown] as [string, ElementContent[]]] : []
  })
}

const isForSale = ({build}: SiteBuild): boolean => build.values['for-sale']?.value === true

/** What it is to cost, and how to ask for it, where it is for sale. */
function forSale(one: SiteBuild, ask: string | undefined): ElementContent[] {
  if (!isForSale(one)) return []
  const {build, plan} = one
  const {values} = build
  const price =
    values.price && [values.price.amount.toFixed(2), plan.cost?.currency].filter(Boolean).join(' ')
  const address =
    ask && (/^https?:\/\/\S+$/.test(ask) ? ask : /^\S+@\S+$/.test(ask) ? `mailto:${ask}` : undefined)
  const asked = ask && [address ? h('a', {href: address}, 'ask the maker') : text(ask)]
  return [...(price ? [text(price)] : []), ...(price && asked ? [text('; ')] : []), ...(asked || [])]
}

function days(started: string | undefined, finished: string | undefined): ElementContent[] {
  const day = (iso: string) => h('time', {dateTime: iso}, iso)
  if (started && finished && started !== finished)
    return [day(started), text(' to '), h('time', {dateTime: finished}, shorter(finished, started))]
  if (finished) return [day(finished)]
  return started ? [text('since '), day(started)] : []
}

/** A day of the same year goes without it. */
const shorter = (iso: string, after: string) => (iso.slice(0, 4) === after.slice(0, 4) ? iso.slice(5) : iso)

const text = (value: string): ElementContent => ({type: 'text', value})
