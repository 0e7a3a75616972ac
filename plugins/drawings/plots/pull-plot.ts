import type {Element} from 'hast'
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
  return plot({id, title: 'Pull of each string', says, width, height: y + 6}, parts)
}

function zoneWords(
  {limits: {slackN, easyN, firmN}}: PullRow,
  y: number,
  x: (n: number) => number,
  mostN: number,
) {
  const zones: [string, number, number][] = [
    ['slack', 0, slackN],
    ['easy', slackN, easyN],
    ['firm', easyN, firmN],
    ['stiff', firmN, mostN],
  ]
  return zones
    .filter(([name, from, to]) => x(to) - x(from) > name.length * plotTextPx * 0.55)
    .map(([name, from, to]) => word((x(from) + x(to)) / 2, y, name, 'middle'))
}

function pullRow(
  {label, tensionN, says, limits: {slackN, easyN, firmN}}: PullRow,
  y: number,
  x: (n: number) => number,
) {
  return [
    word(0, y, label),
    band([x(slackN), y - 8], [x(firmN), y + 8]),
    rule('plot-grid', [left, y], [right, y], {strokeOpacity: 0.35}),
    rule('plot-grid', [x(easyN), y - 8], [x(easyN), y + 8], {strokeOpacity: 0.35}),
    plotMarks(0, [[x(tensionN), y]]),
    word(width, y, says, 'end'),
  ]
}
