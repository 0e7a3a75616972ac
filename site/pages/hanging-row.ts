import type {Element} from 'hast'
import {h, s} from 'hastscript'
import {woodPatterns} from '../../plugins/drawings/hero/woods.ts'
import {inchMm} from '../../plugins/tables/units.ts'
import {written} from '../kit/markup.ts'
import type {SiteBuild} from '../kit/site-data.ts'

/** How a hanging drawing is inked, wherever it stands. */
export const pen = {fill: 'none', strokeLineCap: 'round', strokeLineJoin: 'round'}

/** Write a size in mm. */
export const num = (mm: number): number => Number(mm.toFixed(1))

/** Hang instruments side by side from one nut line at one scale, with a rule to read them by. */
export function hangingRow(builds: readonly SiteBuild[], view: RowView, units: 'in' | 'mm'): Element[] {
  const hung = builds.filter((one) => one.made.hanging)
  if (hung.length === 0) return []
  const woods = [...new Set(hung.flatMap(({made}) => made.hanging!.woods))].sort()
  return [
    h('section.hanging', {ariaLabel: 'Side by side from the nut line'}, [
      h('div.scrolling', {tabIndex: 0, role: 'group', ariaLabel: 'Instruments at one scale'}, [
        h('ol', [
          h('li.rule', {ariaHidden: 'true'}, [hangingRule(view, units, woods)]),
          ...hung.map((one) => hangs(one, view)),
        ]),
      ]),
    ]),
  ]
}

/**
 * Find the view that holds all of a journal's instruments at one scale. The nut line lies at a fifth of its height,
 * where the style sheet draws it.
 */
export function rowView(builds: readonly SiteBuild[]): RowView {
  const frames = builds.flatMap(({made}) => (made.hanging ? [made.hanging.frame] : []))
  const above = frames.reduce((most, {y}) => Math.max(most, -y), 0)
  const below = frames.reduce((most, {y, height}) => Math.max(most, y + height), 0)
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
    {viewBox: [frame.x, topMm, frame.width, heightMm].map(num).join(' '), ariaHidden: 'true', ...pen},
    [s('g.figure', {id: `hanging-${slug}`}, [written(shapes)])],
  )
}

/** From what height above the nut line (negative) all instruments of a row are seen, and how tall the view is; mm. */
export interface RowView {
  topMm: number
  heightMm: number
}

/** Marks in mm, and how many of them to the next figure. */
const marks = {in: {mm: inchMm, toFigure: 6}, mm: {mm: 20, toFigure: 5}}

/**
 * Draw the rule that hangs at the row's beginning: marks from the nut line down, figures in the journal's units. It
 * holds the woods that all others are filled with.
 */
function hangingRule({topMm, heightMm}: RowView, units: 'in' | 'mm', woods: readonly string[]): Element {
  const {mm, toFigure} = marks[units]
  const count = Math.floor((topMm + heightMm - mm) / mm)
  const places = Array.from({length: count + 1}, (_, at) => at)
  const line = (at: number) => `M0 ${(at * mm).toFixed(1)}h${at % toFigure === 0 ? 22 : 11}`
  return s(
    'svg.drawing',
    {viewBox: `0 ${topMm} 90 ${heightMm}`, fill: 'none', stroke: 'currentColor', strokeWidth: 1.6},
    [
      s('defs', woodPatterns(woods)),
      s('path', {d: places.map(line).join('')}),
      ...places
        .filter((at) => at > 0 && at % toFigure === 0)
        .map((at) =>
          s(
            'text',
            {x: 28, y: at * mm + 10, fontSize: 30, fill: 'currentColor', stroke: 'none'},
            figure(at, units),
          ),
        ),
    ],
  )
}

const figure = (at: number, units: 'in' | 'mm') => (units === 'in' ? `${at} in` : `${at * marks.mm.mm}`)
