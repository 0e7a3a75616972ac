import {cross, label, type Point, type Rect, type Shape} from '../kit/shapes.ts'

/** How a template is cut into tiles: where each lies on it, row by row, in mm. */
export interface Tiling {
  columns: number
  rows: number
  tiles: readonly Rect[]
}

/** How much of each tile its neighbour repeats, so that marks to join them by stand on both (mm). */
export const overlapMm = 12

/**
 * Cover a frame with tiles of one size, each repeating a strip of the one before. A third of the room to spare lies
 * before the frame, so that strips keep off the middle, where things have their centre lines.
 */
export function tile(frame: Rect, widthMm: number, heightMm: number): Tiling {
  const count = (length: number, size: number) =>
    Math.max(1, Math.ceil((length - overlapMm - 1e-6) / (size - overlapMm)))
  const columns = count(frame.width, widthMm)
  const rows = count(frame.height, heightMm)
  const start = (from: number, length: number, n: number, size: number) =>
    from - (n * (size - overlapMm) + overlapMm - length) / 3
  const left = start(frame.x, frame.width, columns, widthMm)
  const top = start(frame.y, frame.height, rows, heightMm)
  const tiles = Array.from({length: rows * columns}, (_, i) => ({
    x: left + (i % columns) * (widthMm - overlapMm),
    y: top + Math.floor(i / columns) * (heightMm - overlapMm),
    width: widthMm,
    height: heightMm,
  }))
  return {columns, rows, tiles}
}

const armMm = 4

/**
 * Draw the marks that tiles are joined by: two named crosses in the middle of each strip that two tiles share, so that
 * each stands on both sheets. In the template's mm. Names start from the letter of the first seam, counted from 0.
 */
export function joinMarks({columns, rows, tiles}: Tiling, firstSeam: number): Shape[] {
  const shapes: Shape[] = []
  let seams = firstSeam
  tiles.forEach(({x, y, width, height}, i) => {
    if (i % columns < columns - 1) {
      const middle = x + width - overlapMm / 2
      shapes.push(...seam(seams++, [middle, y + 0.1 * height], [middle, y + 0.9 * height]))
    }
    if (Math.floor(i / columns) < rows - 1) {
      const middle = y + height - overlapMm / 2
      shapes.push(...seam(seams++, [x + 0.1 * width, middle], [x + 0.9 * width, middle]))
    }
  })
  return shapes
}

/** Count the strips that tiles share. */
export const seamsOf = ({columns, rows}: Tiling): number => (columns - 1) * rows + columns * (rows - 1)

function seam(index: number, first: Point, second: Point): Shape[] {
  const name = nameOf(index)
  return [...namedCross(first, `${name}1`), ...namedCross(second, `${name}2`)]
}

/** A, B … Z, AA, AB … */
const nameOf = (index: number): string =>
  (index >= 26 ? nameOf(Math.floor(index / 26) - 1) : '') + String.fromCharCode(65 + (index % 26))

const namedCross = ([x, y]: Point, name: string): Shape[] => [
  ...cross('join', [x, y], armMm),
  label(name, [x + 1, y - 2.3], 2.5),
]
