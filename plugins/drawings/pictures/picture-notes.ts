import type {Element} from 'hast'
import {s} from 'hastscript'
import {textWidthMm} from '../kit/extent.ts'
import {spread} from '../kit/notes.ts'
import type {Flat} from '../solids/region.ts'
import type {Projection} from '../solids/space.ts'
import type {Scene} from './scene.ts'

/** Write a number of mm for a picture. */
export const num = (value: number): string => String(Math.round(value * 100) / 100 + 0)

/** Write a place on the page. */
export const at = ([x, y]: Flat) => `${num(x)} ${num(y)}`

/** The edges of what is drawn, without its numbers (mm). */
export interface Frame {
  left: number
  top: number
  right: number
  bottom: number
}

/** How high the numbers of a picture are on a screen. */
const textPx = 15
/** Of names beside it: on paper as large as the sheet's text. */
const besidePx = 28

interface Notes {
  drawn: Element[]
  /** What they need over and under the picture (px), and how far they reach to its sides (mm). */
  above: number
  below: number
  left: number
  right: number
}

/** Set each number above or below, as near to its place as the others allow, with a leader to it. */
export function notesAround(
  {notes}: Scene,
  {view, frame, mmPx}: {view: Projection; frame: Frame; mmPx: number},
): {drawn: Element[]; above: number; below: number; left: number; right: number} {
  const placed = notes.map(({at: place, text}) => ({place: view.page(place), text}))
  const middle = (frame.top + frame.bottom) / 2
  const rows = [placed.filter(({place}) => place[1] <= middle), placed.filter(({place}) => place[1] > middle)]
  let [left, right] = [frame.left, frame.right]
  const drawn = rows.flatMap((row, below) => {
    const sizes = row.map(({text}) => (textWidthMm(text, textPx) + 12) * mmPx)
    const sorted = row.map((one, i) => ({...one, size: sizes[i]!})).sort((a, b) => a.place[0] - b.place[0])
    const middles = spread(
      sorted.map(({place, size}) => ({target: place[0], size})),
      [frame.left - 8 * mmPx, frame.right + 8 * mmPx],
    )
    for (const [i, {size}] of sorted.entries()) {
      left = Math.min(left, middles[i]! - size / 2)
      right = Math.max(right, middles[i]! + size / 2)
    }
    const y = below ? frame.bottom + (textPx + 6) * mmPx : frame.top - 8 * mmPx
    const from = below ? frame.bottom + 5 * mmPx : frame.top - 5 * mmPx
    return sorted.flatMap(({place, text}, i) => [
      s('path', {
        d: `M${at([middles[i]!, from])}L${at(place)}`,
        className: ['pic-lead'],
        strokeWidth: num(0.9 * mmPx),
      }),
      s(
        'text',
        {
          x: num(middles[i]!),
          y: num(y),
          textAnchor: 'middle',
          fontSize: num(textPx * mmPx),
          ...ink,
        },
        text,
      ),
    ])
  })
  return {
    drawn,
    left,
    right,
    above: rows[0]!.length > 0 ? textPx + 12 : 6,
    below: rows[1]!.length > 0 ? textPx + 12 : 6,
  }
}

/**
 * Set names in a column at the right, each as near to the height of its part as the others allow; those of parts at the
 * left stand over them there, of the lowest under it.
 */
export function notesBeside(
  {notes}: Scene,
  {view, frame, mmPx}: {view: Projection; frame: Frame; mmPx: number},
): Notes {
  const placed = notes
    .map(({at: place, text}) => ({place: view.page(place), text}))
    .sort((a, b) => a.place[1] - b.place[1])
  const isLeft = ({place}: {place: Flat}) => place[0] < frame.left + 0.4 * (frame.right - frame.left)
  const size = 1.35 * besidePx * mmPx
  const column = placed.filter((one) => !isLeft(one))
  const middles = spread(
    column.map(({place}) => ({target: place[1], size})),
    [frame.top, frame.bottom],
  )
  const x = frame.right + 16 * mmPx
  const wide = Math.max(0, ...column.map(({text}) => textWidthMm(text, besidePx) * mmPx))
  const words = (text: string, [left, middle]: Flat) =>
    s(
      'text',
      {x: num(left), y: num(middle + 0.35 * besidePx * mmPx), fontSize: num(besidePx * mmPx), ...ink},
      text,
    )
  const drawn = column.flatMap(({place, text}, i) => [
    lead([x - 3 * mmPx, middles[i]!], place, mmPx),
    words(text, [x, middles[i]!]),
  ])
  const lefts = placed.filter(isLeft)
  const atLeft = lefts.map(({place, text}, i) =>
    words(text, [frame.left, place[1] + (i === lefts.length - 1 ? 34 : -30) * mmPx]),
  )
  const over = Math.max(0, frame.top - (middles[0] ?? frame.top) + size / 2) / mmPx
  const under = Math.max(0, (middles.at(-1) ?? frame.bottom) - frame.bottom + size / 2) / mmPx
  return {
    drawn: [...drawn, ...atLeft],
    above: 6 + Math.max(over, 16),
    below: 6 + Math.max(under, 24),
    left: frame.left,
    right: x + wide + 4 * mmPx,
  }
}

const ink = {stroke: 'none', fill: 'currentColor', className: ['pic-text']}

const lead = (from: Flat, to: Flat, mmPx: number) =>
  s('path', {d: `M${at(from)}L${at(to)}`, className: ['pic-lead'], strokeWidth: num(0.9 * mmPx)})
