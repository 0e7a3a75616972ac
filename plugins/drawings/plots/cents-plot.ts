import type {Element} from 'hast'
import {s} from 'hastscript'
import {axisCents, plotTitles} from '../../words/drawings/plots.ts'
import {spread} from '../kit/notes.ts'
import {at, band, type Place, plot, plotMarks, plotTextPx, rule, word} from './plot.ts'

interface CentsOfString {
  name: string
  /** Sharp positive, by line. */
  beforeCents: readonly number[]
  afterCents: readonly number[]
}

interface CentsPlot {
  id: string
  says: string
  lines: readonly {label: string; fromNutMm: number}[]
  /** What ears notice, either side of none. */
  noticeableCents: number
  before: string
  after: string
}

const width = 400
const height = 280
const [left, right, top, bottom] = [38, width - 42, 40, height - 34]

/**
 * Plot cents over the lines of a neck, each at its own place from the nut: broken lines before, marked lines after, a
 * mark of its own for each string, and the band that ears do not notice.
 */
export function centsPlot(strings: readonly CentsOfString[], options: CentsPlot): Element {
  const {lines, noticeableCents} = options
  const all = strings.flatMap(({beforeCents, afterCents}) => [...beforeCents, ...afterCents])
  const most = Math.max(1.15 * noticeableCents, ...all)
  const least = Math.min(-1.15 * noticeableCents, ...all)
  const lastMm = lines.at(-1)!.fromNutMm
  const x = (mm: number) => left + (mm / lastMm) * (right - left)
  const y = (cents: number) => bottom - ((cents - least) / (most - least)) * (bottom - top)
  const places = (cents: readonly number[]) =>
    cents.map((one, i) => [x(lines[i]!.fromNutMm), y(one)] as const)
  const {id, says} = options
  return plot({id, title: plotTitles.cents, says}, {width, height}, [
    band([left, y(noticeableCents)], [right, y(-noticeableCents)]),
    ...centsAxis(least, most, y),
    ...lineAxis(lines, x),
    ...key(options),
    ...strings.flatMap(({beforeCents, afterCents}, i) => [
      run('plot-before', places(beforeCents), {strokeDashArray: [5, 3], strokeOpacity: 0.75}),
      run('plot-after', places(afterCents), {strokeWidth: 1.4}),
      plotMarks(i, places(afterCents)),
    ]),
    ...names(strings, y),
  ])
}

const run = (className: string, places: readonly Place[], more: object) =>
  s('path', {className: [className], d: `M${places.map(at).join('L')}`, ...more})

function centsAxis(least: number, most: number, y: (cents: number) => number): Element[] {
  const step = [1, 2, 5, 10, 20, 50, 100, 200].find((one) => (most - least) / one <= 8) ?? 500
  const count = Math.floor(most / step) - Math.ceil(least / step) + 1
  return Array.from({length: count}, (_, i) => (Math.ceil(least / step) + i) * step).flatMap((cents) => [
    rule('plot-grid', [left, y(cents)], [right, y(cents)], {strokeOpacity: cents === 0 ? 0.8 : 0.18}),
    word(axisCents(cents), [left - 6, y(cents)], 'end'),
  ])
}

/** A tick at every line; its label where the one before leaves room. */
function lineAxis(lines: CentsPlot['lines'], x: (mm: number) => number): Element[] {
  let free = 0
  return lines.flatMap(({label, fromNutMm}) => {
    const place = x(fromNutMm)
    const room = (label.length * plotTextPx * 0.6) / 2 + 3
    const tick = rule('plot-grid', [place, top], [place, bottom], {strokeOpacity: 0.18})
    if (place - room < free) return [tick]
    free = place + room
    return [tick, word(label, [place, bottom + 14], 'middle')]
  })
}

function key({before, after}: CentsPlot): Element[] {
  return [
    rule('plot-before', [left, 12], [left + 26, 12], {strokeDashArray: [5, 3], strokeOpacity: 0.75}),
    word(before, [left + 32, 12]),
    rule('plot-after', [left + 160, 12], [left + 186, 12], {strokeWidth: 1.4}),
    plotMarks(0, [[left + 173, 12]]),
    word(after, [left + 192, 12]),
  ]
}

/** Each string's name and mark beside the end of its broken line, kept apart. */
function names(strings: readonly CentsOfString[], y: (cents: number) => number): Element[] {
  const wished = strings
    .map(({name, beforeCents}, i) => ({i, name, target: y(beforeCents.at(-1)!), size: plotTextPx + 2}))
    .sort((a, b) => a.target - b.target)
  const middles = spread(wished, [top - 8, bottom + 8])
  return wished.flatMap(({i, name}, at) => [
    plotMarks(i, [[right + 8, middles[at]!]]),
    word(name, [right + 15, middles[at]!]),
  ])
}
