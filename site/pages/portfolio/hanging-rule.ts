import type {Element} from 'hast'
import {s} from 'hastscript'

/** From what height above the nut line (negative) all instruments of a row are seen, and how tall the view is; mm. */
export interface RowView {
  topMm: number
  heightMm: number
}

/** Marks in mm, and how many of them to the next figure. */
const marks = {in: {mm: 25.4, toFigure: 6}, mm: {mm: 20, toFigure: 5}}

/** Draw the rule that hangs at the row's beginning: marks from the nut line down, figures in the journal's units. */
export function hangingRule({topMm, heightMm}: RowView, units: 'in' | 'mm'): Element {
  const {mm, toFigure} = marks[units]
  const count = Math.floor((topMm + heightMm - mm) / mm)
  const places = Array.from({length: count + 1}, (_, at) => at)
  const line = (at: number) => `M0 ${(at * mm).toFixed(1)}h${at % toFigure === 0 ? 22 : 11}`
  return s(
    'svg.drawing',
    {viewBox: `0 ${topMm} 90 ${heightMm}`, fill: 'none', stroke: 'currentColor', strokeWidth: 1.6},
    [
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
