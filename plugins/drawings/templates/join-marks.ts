import {type Point, path, type Shape} from '../kit/shape.ts'
import {overlapMm, type Tiling} from './tiling.ts'

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
  return [...cross(first, `${name}1`), ...cross(second, `${name}2`)]
}

/** A, B … Z, AA, AB … */
const nameOf = (index: number): string =>
  (index >= 26 ? nameOf(Math.floor(index / 26) - 1) : '') + String.fromCharCode(65 + (index % 26))

function cross([x, y]: Point, name: string): Shape[] {
  return [
    path('join', [x - armMm, y], [x + armMm, y]),
    path('join', [x, y - armMm], [x, y + armMm]),
    {is: 'text', ink: 'figure', at: [x + 1, y - 2.3], text: name, sizeMm: 2.5, anchor: 'start'},
  ]
}
