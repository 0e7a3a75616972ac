import type {Element} from 'hast'
import {s} from 'hastscript'
import {capitalHeight} from '../kit/extent.ts'
import {pictureSvg} from '../writers/svg.ts'

/** A place on a plot, in px to the right and down. */
export type Place = readonly [number, number]

/** How high a plot's text is, in px, at the width that it asks for. */
export const plotTextPx = 13

/**
 * Frame a plot as SVG for a page. Parts carry classes (`plot-axis`, `plot-grid`, `plot-band`, `plot-before`,
 * `plot-after`, `plot-dot`) for the style sheet; what they need to be seen without one is in attributes.
 */
export function plot(
  words: {id: string; title: string; says: string},
  {width, height}: {width: number; height: number},
  parts: readonly Element[],
): Element {
  const size = {className: ['drawing', 'plot'], viewBox: `0 0 ${width} ${height}`, width, height}
  return pictureSvg(words, size, parts)
}

/** Write a word on a plot; `y` is the middle of its height. */
export function word(text: string, [x, y]: Place, anchor: 'start' | 'middle' | 'end' = 'start'): Element {
  const properties = {
    x: String(px(x)),
    y: String(px(y + (capitalHeight / 2) * plotTextPx)),
    fontSize: String(plotTextPx),
    fill: 'currentColor',
    stroke: 'none',
    textAnchor: anchor === 'start' ? undefined : anchor,
  }
  return s('text', properties, text)
}

/** Draw a straight line of a plot. */
export function rule(className: string, from: Place, to: Place, more = {}): Element {
  return s('path', {className: [className], d: `M${at(from)}L${at(to)}`, ...more})
}

/** Tint an area of a plot between two opposite corners. */
export function band(from: Place, to: Place): Element {
  const corners = [from, [to[0], from[1]], to, [from[0], to[1]]] as const
  const d = `M${corners.map(at).join('L')}Z`
  return s('path', {
    className: ['plot-band'],
    d,
    fill: 'currentColor',
    fillOpacity: 0.1,
    stroke: 'none',
  })
}

/** Write a place as an SVG path does. */
export const at = ([x, y]: Place): string => `${px(x)} ${px(y)}`

const px = (value: number): number => Number(value.toFixed(1))

/** Outlines of marks about a middle, so that strings are told apart without colour. */
const outlines: readonly (readonly Place[])[] = [
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
export function plotMarks(i: number, places: readonly Place[]): Element {
  const outline = outlines[(i % (outlines.length + 1)) - 1]
  const data = places.map(([x, y]) =>
    outline
      ? `M${outline.map(([dx, dy]) => at([x + dx, y + dy])).join('L')}Z`
      : `M${at([x - 3, y])}a3 3 0 1 1 6 0a3 3 0 1 1 -6 0Z`,
  )
  return s('path', {className: ['plot-dot'], d: data.join(''), fill: 'currentColor', stroke: 'none'})
}
