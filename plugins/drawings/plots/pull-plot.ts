import type {Element} from 'hast'
import {plotTitles, pullZones} from '../../words/drawings/plots.ts'
import {band, plot, plotMarks, plotTextPx, rule, word} from './plot.ts'

interface PullRow {
  /** The string and its gauge. */
  label: string
  tensionN: number
  /** The pull as the page writes it. */
  says: string
  limits: {slackN: number; easyN: number; firmN: number}
}

const width = 390
const left = 98
const right = width - 56
const rowHeight = 34
const headHeight = 22

/**
 * Plot each string's pull (N) against what is slack, easy, firm and stiff for it: a band from slack to stiff with a
 * mark between easy and firm, the words over it wherever the limits change, a dot at the pull and its figure beside.
 */
export function pullPlot(rows: readonly PullRow[], {id, says}: {id: string; says: string}): Element {
  const mostN = Math.max(...rows.flatMap(({tensionN, limits}) => [1.1 * tensionN, 1.35 * limits.firmN]))
  const x = (n: number) => left + (Math.min(n, mostN) / mostN) * (right - left)
  let y = 0
  const parts = rows.flatMap((row, i) => {
    const isNewScale = row.limits.firmN !== rows[i - 1]?.limits.firmN
    const words = isNewScale ? zoneWords(row, y + headHeight / 2 + 4, x, mostN) : []
    if (isNewScale) y += headHeight
    y += rowHeight
    return [...words, ...pullRow(row, y - rowHeight / 2, x)]
  })
  return plot({id, title: plotTitles.pull, says}, {width, height: y + 6}, parts)
}

function zoneWords(
  {limits: {slackN, easyN, firmN}}: PullRow,
  y: number,
  x: (n: number) => number,
  mostN: number,
) {
  const bounds = [0, slackN, easyN, firmN, mostN].map(x)
  return pullZones.flatMap((name, i) => {
    const [from, to] = [bounds[i]!, bounds[i + 1]!]
    const fits = to - from > name.length * plotTextPx * 0.55
    return fits ? [word(name, [(from + to) / 2, y], 'middle')] : []
  })
}

function pullRow(
  {label, tensionN, says, limits: {slackN, easyN, firmN}}: PullRow,
  y: number,
  x: (n: number) => number,
) {
  return [
    word(label, [0, y]),
    band([x(slackN), y - 8], [x(firmN), y + 8]),
    rule('plot-grid', [left, y], [right, y], {strokeOpacity: 0.35}),
    rule('plot-grid', [x(easyN), y - 8], [x(easyN), y + 8], {strokeOpacity: 0.35}),
    plotMarks(0, [[x(tensionN), y]]),
    word(says, [width, y], 'end'),
  ]
}
