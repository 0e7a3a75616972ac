import type {Element, ElementContent} from 'hast'
import {h, s} from 'hastscript'
import {lengthOnly, withFractions} from '../kit/markup.ts'
import {showPicture} from '../kit/picture.ts'
import type {SiteBuild} from '../kit/site-data.ts'
import {type KindFacts, kindFacts, said} from './build-facts.ts'
import {drawnCover} from './drawn-cover.ts'
import {num, pen} from './hanging-row.ts'

/** Write a build's card: its cover or its own drawing, and what tells it apart. */
export function card(one: SiteBuild): Element {
  const facts = kindFacts(one)
  const {slug, title, build} = one
  return h('li.card', {id: `card-${slug}`}, [
    h('a.picture', {href: `/builds/${slug}/`, tabIndex: -1, ariaHidden: 'true'}, [picture(one)]),
    h('div.words', [
      h('h2', [h('a', {href: `/builds/${slug}/`}, title)]),
      one.isDraft ? h('p.draft', 'Draft: not on the published site') : undefined,
      build.values.summary ? h('p', withFractions(build.values.summary.value)) : undefined,
      h('p.kind', joined(kind(one, facts))),
      h('p.standing', joined(standing(facts))),
    ]),
  ])
}

function kind(one: SiteBuild, facts: KindFacts): ElementContent[][] {
  const box = said(one, 'box.wood')
  return [
    ...(facts.tuning ? [[text(facts.tuning)]] : facts.strings ? [[text(`${facts.strings} strings`)]] : []),
    ...(facts.scaleMm ? [lengthOnly(facts.scaleMm, one.plan)] : []),
    ...(facts.frets ? [[text(facts.frets)]] : []),
    ...(box ? [[text(box)]] : []),
  ]
}

function standing({status, isPlayedWell}: KindFacts): ElementContent[][] {
  return [...(status ? [[text(status)]] : []), ...(isPlayedWell ? [[h('strong', 'played well')]] : [])]
}

const joined = (parts: ElementContent[][]): ElementContent[] =>
  parts.flatMap((part, at) => (at === 0 ? part : [text(' · '), ...part]))

const text = (value: string): ElementContent => ({type: 'text', value})

function picture(one: SiteBuild): Element | undefined {
  const {
    cover,
    slug,
    made: {hanging},
  } = one
  if (cover) return showPicture(cover, '', '(min-width: 60rem) 23rem, (min-width: 40rem) 46vw, 100vw')
  const drawn = drawnCover(one, '')
  if (drawn) return drawn
  if (!hanging) return undefined
  const {x, y, width, height} = hanging.frame
  // The hanging drawing laid on its side, head to the left.
  return s('svg.drawing', {viewBox: [y, x, height, width].map(num).join(' '), ...pen}, [
    s('use', {href: `#hanging-${slug}`, transform: 'matrix(0 1 1 0 0 0)'}),
  ])
}
