import type {Element} from 'hast'
import {s} from 'hastscript'
import {at, type Place, plot, plotMarks, rule, word} from './plot.ts'

interface OverTime {
  id: string
  title: string
  says: string
  /** What was measured, the earliest first, each with its day (year-month-day) and its figure as the page writes it. */
  days: readonly {on: string; value: number; figure: string}[]
  /** What was planned, in the same unit. */
  planned?: {value: number; figure: string} | undefined
}

const width = 340
const height = 132
const [left, right, top, bottom] = [84, width - 14, 16, height - 30]

/**
 * Plot one measure over the days on which it was taken, each at its own place in time; what was planned is a broken
 * line. Days and figures stand at the first and the last, and at the least and the most.
 */
export function overTimePlot({id, title, says, days, planned}: OverTime): Element {
  const all = [...days, ...(planned ? [planned] : [])].toSorted((a, b) => a.value - b.value)
  const [least, most] = [all[0]!, all.at(-1)!]
  const [first, last] = [days[0]!, days.at(-1)!]
  const span = timeOf(last.on) - timeOf(first.on)
  const x = (on: string) => left + (span > 0 ? (timeOf(on) - timeOf(first.on)) / span : 0.5) * (right - left)
  const range = most.value - least.value
  const y = (value: number) => bottom - (range > 0 ? (value - least.value) / range : 0.5) * (bottom - top)
  const places = days.map(({on, value}): Place => [x(on), y(value)])
  const figures = range > 0 ? [least, most] : [least]
  return plot({id, title, says}, {width, height}, [
    ...figures.flatMap(({value, figure}) => [
      rule('plot-grid', [left, y(value)], [right, y(value)], {strokeOpacity: 0.18}),
      word(figure, [left - 6, y(value)], 'end'),
    ]),
    ...(planned
      ? [rule('plot-before', [left, y(planned.value)], [right, y(planned.value)], {strokeDashArray: [5, 3]})]
      : []),
    s('path', {className: ['plot-after'], d: `M${places.map(at).join('L')}`, strokeWidth: 1.4}),
    plotMarks(0, places),
    word(first.on, [left, height - 8]),
    ...(span > 0 ? [word(last.on, [right, height - 8], 'end')] : []),
  ])
}

const timeOf = (on: string): number => Date.parse(`${on}T00:00:00Z`)
