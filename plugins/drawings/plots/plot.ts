import type {Element, ElementContent} from 'hast'
import {element} from '../writers/svg.ts'

/** How high a plot's text is, in px, at the width that it asks for. */
export const plotTextPx = 13

/**
 * Frame a plot as SVG for a page: named by its title, told by its description, in the colour of the text around it.
 * `id` starts the ids of both. Parts carry classes (`plot-axis`, `plot-grid`, `plot-band`, `plot-before`, `plot-after`,
 * `plot-dot`) for the style sheet; what they need to be seen without one is in attributes.
 */
export function plot(
  {id, title, says, width, height}: {id: string; title: string; says: string; width: number; height: number},
  parts: ElementContent[],
): Element {
  return element(
    'svg',
    {
      className: ['drawing', 'plot'],
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: 'img',
      ariaLabelledBy: [`${id}-title`],
      ariaDescribedBy: [`${id}-desc`],
      fill: 'none',
      stroke: 'currentColor',
    },
    [
      element('title', {id: `${id}-title`}, [{type: 'text', value: title}]),
      element('desc', {id: `${id}-desc`}, [{type: 'text', value: says}]),
      ...parts,
    ],
  )
}

/** Write a word on a plot; `y` is the middle of its height. */
export function word(
  x: number,
  y: number,
  text: string,
  anchor: 'start' | 'middle' | 'end' = 'start',
): Element {
  return element(
    'text',
    {
      x: String(px(x)),
      y: String(px(y + 0.35 * plotTextPx)),
      fontSize: String(plotTextPx),
      fill: 'currentColor',
      stroke: 'none',
      ...(anchor !== 'start' && {textAnchor: anchor}),
    },
    [{type: 'text', value: text}],
  )
}

/** Draw a straight line of a plot. */
export function rule(
  className: string,
  from: readonly [number, number],
  to: readonly [number, number],
  more = {},
): Element {
  return element('path', {className: [className], d: `M${at(from)}L${at(to)}`, ...more})
}

/** Tint an area of a plot between two opposite corners. */
export function band(from: readonly [number, number], to: readonly [number, number]): Element {
  const corners = [from, [to[0], from[1]], to, [from[0], to[1]]] as const
  const d = `M${corners.map(at).join('L')}Z`
  return element('path', {
    className: ['plot-band'],
    d,
    fill: 'currentColor',
    fillOpacity: 0.1,
    stroke: 'none',
  })
}

/** Write a place as an SVG path does. */
export const at = ([x, y]: readonly [number, number]): string => `${px(x)} ${px(y)}`

const px = (value: number): number => Number(value.toFixed(1))

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
