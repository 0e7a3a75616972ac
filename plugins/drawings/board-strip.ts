import type {Element} from 'hast'
import {s} from 'hastscript'
import type {CutPiece} from '../plan/stock/cut-list.ts'
import {type Place, plotTextPx, word} from './plots/plot.ts'
import {pictureSvg} from './writers/svg.ts'

/** A board as it is looked at from above (mm), its length across the page. */
export interface Board extends Pick<CutPiece, 'lengthMm' | 'widthMm'> {
  /** What of its length is clear. */
  clearMm?: readonly [number, number] | undefined
  isReserved?: boolean | undefined
  cut?: Pick<CutPiece, 'strips' | 'offcuts'> | undefined
}

/** How wide the longest board of a rack is drawn, in px. */
export const longestPx = 336
const letterPx = 7.2

interface Look {
  id: string
  title: string
  says: string
  /** What offcuts are called, in their order. */
  kept: readonly string[]
  /** One scale for all boards of a page. */
  pxPerMm: number
}

/**
 * Draw a board as a strip to scale: what was cut of it filled, what is left outlined and named, what is not clear
 * beyond a broken line. A board that is spoken for has a bar along its edge.
 */
export function boardStrip(board: Board, {id, title, says, kept, pxPerMm}: Look): Element {
  const px = (mm: number) => Number((mm * pxPerMm).toFixed(1))
  const box = ([x, y]: Place, [width, height]: Place, more = {}) =>
    s('rect', {x: px(x), y: px(y), width: px(width), height: px(height), ...more})
  const {lengthMm, widthMm, clearMm, cut, isReserved} = board
  const parts = (cut?.strips ?? []).flatMap(({acrossMm, cuts}) =>
    cuts.map((one) => box([one.atMm, acrossMm], [one.lengthMm, one.widthMm], filled)),
  )
  const left = (cut?.offcuts ?? []).flatMap(({atMm, acrossMm, lengthMm: long, widthMm: wide}, at) => {
    const name = kept[at] ?? ''
    const fits = px(long) > name.length * letterPx + 4 && px(wide) >= plotTextPx
    return [
      box([atMm, acrossMm], [long, wide], dashed),
      ...(fits ? [word(name, [px(atMm + long / 2), px(acrossMm + wide / 2)], 'middle')] : []),
    ]
  })
  const unclear = (clearMm ?? []).filter((mm) => mm > 0 && mm < lengthMm)
  const ends = unclear.map((mm) => s('path', {d: `M${px(mm)} 0V${px(widthMm)}`, ...dashed}))
  const bar = isReserved ? [box([0, 0], [lengthMm, Math.min(widthMm, 3 / pxPerMm)], filled)] : []
  const width = Math.ceil(px(lengthMm)) + 2
  const height = Math.ceil(px(widthMm)) + 2
  const size = {className: ['drawing', 'plot'], viewBox: `-1 -1 ${width} ${height}`, width, height}
  return pictureSvg({id, title, says}, size, [
    box([0, 0], [lengthMm, widthMm]),
    ...parts,
    ...left,
    ...ends,
    ...bar,
  ])
}

const filled = {fill: 'currentColor', fillOpacity: 0.3}
const dashed = {strokeDasharray: '3 2'}
