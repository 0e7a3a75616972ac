import {textWidthMm} from '../kit/extent.ts'
import {box, circle, type Point, path, type Shape, type Text} from '../kit/shapes.ts'
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
    words([0, 19], 'Print at 100 %, then measure these bars.', 3, 112),
    ...legend(25),
    words([0, 32], 'Where sheets join, lay cross on cross of the same name.', 2.6, 112),
    words([left, 6], title, 4.2, room),
    words([left, 12], template, 3.2, room),
    words([left, 17], `sheet ${sheet} of ${sheets}`, 3.2, room),
    words([left, 23], file, 2.6, room),
    ...(day ? [words([left, 27.5], day, 2.6, room)] : []),
    ...map(foot, [widthMm - mapMm, 3]),
  ]
}

/** Set words in a line, in smaller type or cut short with an ellipsis where there is less room. */
function words(at: Point, text: string, sizeMm: number, roomMm: number): Text {
  const line = (words: string, size: number): Text => ({
    is: 'text',
    ink: 'figure',
    at,
    text: words,
    sizeMm: size,
    anchor: 'start',
  })
  const size = Math.max(2.4, Math.min(sizeMm, (sizeMm * roomMm) / textWidthMm(text, sizeMm)))
  if (textWidthMm(text, size) <= roomMm) return line(text, size)
  let short = text
  while (short && textWidthMm(`${short}…`, size) > roomMm) short = short.slice(0, -1)
  return line(`${short.trimEnd()}…`, size)
}

/** A sample of each line, told apart by weight and dashes, and its word. */
function legend(y: number): Shape[] {
  const sample = (x: number, ink: 'cut' | 'slot' | 'pencil', text: string): Shape[] => [
    path(ink, [x, y], [x + 9, y]),
    label(x + 10, text),
  ]
  const label = (x: number, text: string): Text => ({
    is: 'text',
    ink: 'name',
    at: [x, y],
    text,
    sizeMm: 2.6,
    anchor: 'start',
  })
  return [
    ...sample(0, 'cut', 'cut'),
    ...sample(18, 'slot', 'knife or saw'),
    ...sample(48, 'pencil', 'pencil'),
    ...punch([71, y]),
    label(74, 'centre punch'),
    circle('hole', [97, y], 2),
    label(100, 'drill'),
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
      box('join', [left, top], corner),
      ...(i === tile
        ? [box('dot', [left + inner, top + inner], [corner[0] - inner, corner[1] - inner])]
        : []),
    ]
  })
}
