import type {Rect} from '../kit/shape.ts'

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
