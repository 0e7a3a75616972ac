import {footWords} from '../../words/drawings/templates.ts'
import {textWidthMm} from '../kit/extent.ts'
import {circle, label, type Point, path, rectangle, type Shape, type Text} from '../kit/shapes.ts'
import {bothBars, punch} from './marks.ts'
import type {Tiling} from './tiles.ts'

/** How high the foot of a sheet is, in mm. */
export const footMm = 36

interface Foot {
  /** What the instrument is called, which template this is, the file and the day. */
  title: string
  template: string
  file: string
  day?: string | undefined
  sheet: number
  sheets: number
  tiling: Tiling
  /** Counted from 0: which tile of the template this is. */
  tile: number
}

/**
 * Draw the foot of a sheet, from its upper left corner at 0: bars to check the printer by, what the lines mean, what
 * this sheet is, and a map of the tiles with this one filled. It is so many mm wide.
 */
export function sheetFoot(foot: Foot, widthMm: number): Shape[] {
  const mapMm = 4.5 * foot.tiling.columns
  const left = 118
  const room = widthMm - left - mapMm - 3
  const {title, template, file, day, sheet, sheets} = foot
  return [
    path('join', [0, 0], [widthMm, 0]),
    ...bothBars([0, 6]),
    words(footWords.bars, [0, 19], 3, 112),
    ...legend(25),
    words(footWords.joins, [0, 32], 2.6, 112),
    words(title, [left, 6], 4.2, room),
    words(footWords.fullSize(template), [left, 12], 3.2, room),
    words(footWords.sheet(sheet, sheets), [left, 17], 3.2, room),
    words(file, [left, 23], 2.6, room),
    ...(day ? [words(day, [left, 27.5], 2.6, room)] : []),
    ...map(foot, [widthMm - mapMm, 3]),
  ]
}

/** Set words in a line, in smaller type or cut short with an ellipsis where there is less room. */
function words(text: string, at: Point, sizeMm: number, roomMm: number): Text {
  const size = Math.max(2.4, Math.min(sizeMm, (sizeMm * roomMm) / textWidthMm(text, sizeMm)))
  if (textWidthMm(text, size) <= roomMm) return label(text, at, size)
  let short = ''
  let widthMm = textWidthMm('…', size)
  for (const letter of text) {
    widthMm += textWidthMm(letter, size)
    if (widthMm > roomMm) break
    short += letter
  }
  return label(`${short.trimEnd()}…`, at, size)
}

/** A sample of each line, told apart by weight and dashes, and its word. */
function legend(y: number): Shape[] {
  const word = (x: number, text: string) => label(text, [x, y], 2.6, {ink: 'name'})
  const sample = (x: number, ink: 'cut' | 'slot' | 'pencil'): Shape[] => [
    path(ink, [x, y], [x + 9, y]),
    word(x + 10, footWords[ink]),
  ]
  return [
    ...sample(0, 'cut'),
    ...sample(18, 'slot'),
    ...sample(48, 'pencil'),
    ...punch([71, y]),
    word(74, footWords.punch),
    circle('hole', [97, y], 2),
    word(100, footWords.drill),
  ]
}

function map({tiling, tile}: Foot, [x, y]: Point): Shape[] {
  const [wide, high] = [4.5, Math.min(5.5, 30 / tiling.rows)]
  return tiling.tiles.flatMap((_, i) => {
    const left = x + (i % tiling.columns) * wide
    const top = y + Math.floor(i / tiling.columns) * high
    const corner: Point = [left + wide, top + high]
    const inner = Math.min(wide, high) * 0.18
    return [
      rectangle('join', [left, top], corner),
      ...(i === tile
        ? [rectangle('dot', [left + inner, top + inner], [corner[0] - inner, corner[1] - inner])]
        : []),
    ]
  })
}
