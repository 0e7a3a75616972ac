import type {Element} from 'hast'
import {band, type Place, plot, plotMarks, rule, word} from './plot.ts'

interface OffPlan {
  id: string
  title: string
  says: string
  /** How far each measure is off its plan. */
  differences: readonly number[]
  /** The middle one, and how far from the plan half of them lie at most. */
  median: number
  typical: number
  /** The words of the ends of the axis, of the middle one, and of none off. */
  words: {least: string; most: string; middle: string; plan: string}
}

const width = 340
const [left, right, middleY] = [10, width - 10, 52]
const dotPx = 7

/**
 * Plot how far measures lie off their plan: a dot for each over a zero line, those alike stacked, with a band within
 * which half of them lie, and a mark at the middle one.
 */
export function offPlanPlot({id, title, says, differences, median, typical, words}: OffPlan): Element {
  const most = Math.max(...differences.map(Math.abs), Number.EPSILON)
  const x = (off: number) => (left + right) / 2 + (off / most) * ((right - left) / 2 - dotPx)
  const stacks = new Map<number, number>()
  const places = [...differences]
    .sort((a, b) => a - b)
    .map((off): Place => {
      const column = Math.round(x(off) / dotPx)
      const under = stacks.get(column) ?? 0
      stacks.set(column, under + 1)
      return [column * dotPx, middleY - 6 - under * dotPx]
    })
  const highest = Math.max(...stacks.values())
  const drop = Math.max(0, (highest - 5) * dotPx)
  const down = ([px, py]: Place): Place => [px, py + drop]
  const y = middleY + drop
  return plot({id, title, says}, {width, height: y + 44}, [
    band([x(-typical), y - 10], [x(typical), y + 4]),
    rule('plot-axis', [left, y], [right, y]),
    rule('plot-grid', [x(0), 6], [x(0), y + 4], {strokeOpacity: 0.8}),
    plotMarks(0, places.map(down)),
    rule('plot-after', [x(median), y - 14], [x(median), y + 10], {strokeWidth: 2}),
    word(words.least, [left, y + 16]),
    word(words.plan, [x(0), y + 16], 'middle'),
    word(words.most, [right, y + 16], 'end'),
    word(words.middle, [width / 2, y + 34], 'middle'),
  ])
}
