import type {Element} from 'hast'
import {s} from 'hastscript'
import type {Relative} from '../../plan/family.ts'
import {familyWords} from '../../words/drawings/plots.ts'
import {at, type Place, plotMarks, word} from './plot.ts'

const rowPx = 30
const stepPx = 22
/** Deeper copies stand no further in, so that a long line stays on the page. */
const deepest = 8
const longestName = 36
/** A letter's width on the whole (common practice, no source). */
const letterPx = 7.2

/** Draw a family of builds: a row each below the one it was copied from, its name a link, the build `here` by its dot. */
export function familyTree(rows: readonly Relative[], here: string): Element {
  const x = ({depth}: Relative) => 6 + Math.min(depth, deepest) * stepPx
  const y = (row: number) => rowPx * (row + 0.5)
  const names = rows.map(({title, isMissing}) => familyWords.name(shortened(title), isMissing === true))
  const width = Math.ceil(Math.max(...rows.map((row, i) => x(row) + 14 + names[i]!.length * letterPx)) + 8)
  const height = rows.length * rowPx
  const size = {className: ['drawing', 'plot', 'family'], viewBox: `0 0 ${width} ${height}`, width, height}
  const own = {role: 'group', ariaLabelledBy: ['family-title'], fill: 'none', stroke: 'currentColor'}
  return s('svg', {...size, ...own}, [
    s('title', {id: 'family-title'}, familyWords.title),
    ...rows.map((row, i) => stem(row, [x(row), y(i)], row.under === undefined ? undefined : y(row.under))),
    ...rows.flatMap((row, i) => [
      row.slug === here ? plotMarks(0, [[x(row), y(i)]]) : ring([x(row), y(i)]),
      name(row, word(names[i]!, [x(row) + 12, y(i)]), here),
    ]),
  ])
}

/** From the original's dot down, then across to the copy's. */
function stem({depth}: Relative, [x, y]: Place, fromY: number | undefined): Element {
  const left = x - (depth > deepest ? 0 : stepPx)
  const d = fromY === undefined ? '' : `M${at([left, fromY + 5])}L${at([left, depth > deepest ? y - 5 : y])}`
  return s('path', {className: ['plot-grid'], d: d && depth <= deepest ? `${d}L${at([x - 5, y])}` : d})
}

const ring = ([x, y]: Place): Element => s('circle', {cx: x, cy: y, r: 3.5})

function name({slug, isMissing}: Relative, text: Element, here: string): Element {
  if (isMissing) return text
  if (slug === here) return {...text, properties: {...text.properties, fontWeight: 'bold'}}
  return s('a', {href: `/builds/${slug}/`}, [text])
}

const shortened = (title: string): string =>
  [...title].length > longestName ? `${[...title].slice(0, longestName - 1).join('')}…` : title
