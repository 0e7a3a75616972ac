import type {Element} from 'hast'
import {element} from '../writers/svg-parts.ts'
import {at} from './plot.ts'

/** Outlines of marks about a middle, so that strings are told apart without colour. */
const outlines: readonly (readonly (readonly [number, number])[])[] = [
  [
    [-3, -3],
    [3, -3],
    [3, 3],
    [-3, 3],
  ],
  [
    [0, -4],
    [3.6, 2.6],
    [-3.6, 2.6],
  ],
  [
    [0, -4.2],
    [4.2, 0],
    [0, 4.2],
    [-4.2, 0],
  ],
  [
    [-3.6, -2.6],
    [3.6, -2.6],
    [0, 4],
  ],
  [
    [-1.2, -4],
    [1.2, -4],
    [1.2, 4],
    [-1.2, 4],
  ],
]

/** Draw the mark of string number `i` (from 0) in places of a plot: a dot, a square, a triangle … by turns. */
export function plotMarks(i: number, places: readonly (readonly [number, number])[]): Element {
  const outline = outlines[(i % (outlines.length + 1)) - 1]
  const data = places.map(([x, y]) =>
    outline
      ? `M${outline.map(([dx, dy]) => at([x + dx, y + dy])).join('L')}Z`
      : `M${at([x - 3, y])}a3 3 0 1 1 6 0a3 3 0 1 1 -6 0Z`,
  )
  return element('path', {className: ['plot-dot'], d: data.join(''), fill: 'currentColor', stroke: 'none'})
}
