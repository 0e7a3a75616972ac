import type {Element} from 'hast'
import {h, s} from 'hastscript'
import {written} from '../../html/markup.ts'
import type {Hanging, SiteBuild} from '../../site-data.ts'
import {hangingRule, type RowView} from './hanging-rule.ts'

/** As many as a row can show; the cards below are all of them. */
const most = 120

/** How a hanging drawing is inked, wherever it stands. */
export const pen = {fill: 'none', stroke: 'currentColor', strokeLineCap: 'round', strokeLineJoin: 'round'}

/** Hang instruments side by side from one nut line at one scale, with a rule to read them by. */
export function hangingRow(builds: readonly SiteBuild[], units: 'in' | 'mm'): Element[] {
  const hung = builds.filter((one) => one.made.hanging)
  if (hung.length === 0) return []
  const view = rowView(hung.map((one) => one.made.hanging!))
  const row = h('section.hanging', {ariaLabel: 'Side by side from the nut line'}, [
    h('div.scrolling', {tabIndex: 0, role: 'group', ariaLabel: 'Instruments at one scale'}, [
      h('ol', [
        h('li.rule', {ariaHidden: 'true'}, [hangingRule(view, units)]),
        ...hung.slice(0, most).map((one) => hangs(one, view)),
      ]),
    ]),
    ...(hung.length > most
      ? [
          h(
            'div',
            {hidden: true},
            hung.slice(most).map((one) => drawing(one, view)),
          ),
        ]
      : []),
  ])
  return [row]
}

/** The nut line lies at a fifth of the view's height, where the style sheet draws it. */
function rowView(all: readonly Hanging[]): RowView {
  const above = Math.max(...all.map(({frame}) => -frame.y))
  const below = Math.max(...all.map(({frame}) => frame.y + frame.height))
  const heightMm = Math.ceil(Math.max(above * 5, below / 0.8))
  return {topMm: -heightMm / 5, heightMm}
}

function hangs(one: SiteBuild, view: RowView): Element {
  return h('li', {dataCard: `card-${one.slug}`}, [
    h('a', {href: `/builds/${one.slug}/`}, [drawing(one, view), h('span', one.title)]),
  ])
}

function drawing({slug, made}: SiteBuild, {topMm, heightMm}: RowView): Element {
  const {shapes, frame} = made.hanging!
  return s(
    'svg.drawing',
    {viewBox: [frame.x, topMm, frame.width, heightMm].join(' '), ariaHidden: 'true', ...pen},
    [s('g', {id: `hanging-${slug}`}, [written(shapes)])],
  )
}
