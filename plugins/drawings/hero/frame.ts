import {boxSide} from '../instrument/box.ts'
import {tunersFront} from '../instrument/hardware.ts'
import type {Instrument} from '../instrument/instrument.ts'
import {neckSide} from '../instrument/neck.ts'
import {stringSide} from '../instrument/strings.ts'
import {extent} from '../kit/extent.ts'
import type {Point, Shape} from '../kit/shapes.ts'

/** The drawing's width in px: what a phone 390 px wide leaves between its edges. One px is one unit of the drawing. */
export const widthPx = 358
/** Where the names of the stations end, and the height of every character. */
export const namesPx = 124
export const textPx = 14

const tallestPx = 590
const gapPx = 24
const postNamePx = 30

/** Where the two views hang, and how many px a mm is. */
export interface Frame {
  scale: number
  /** The nut line, down the page. */
  nutPx: number
  /** The centre line of the front, and the playing face of the side, across the page. */
  frontPx: number
  sidePx: number
  heightPx: number
  /** The lowest of the instrument, in mm from the nut line. */
  bottomMm: number
}

/** Hang both views from one nut line, at the largest scale that leaves room for names and figures. */
export function frameOf(instrument: Instrument): Frame | undefined {
  const {neck, head, box} = instrument
  if (!neck) return undefined
  const side = extent([...boxSide(instrument), ...neckSide(instrument), ...stringSide(instrument)])
  const tuners = extent(tunersFront(instrument))
  const headHalfMm = Math.max(-tuners.x, tuners.x + tuners.width, (head?.widthMm ?? 0) / 2)
  const bodyHalfMm = Math.max((box?.widthMm ?? 0) / 2, neck.nutWidthMm / 2, neck.tailWidthMm / 2)
  const topMm = head?.lengthMm ?? 0
  const bottomMm = Math.max(neck.tailMm, box?.tailMm ?? 0)
  const room = widthPx - namesPx - gapPx - 14
  const scale = Math.min(
    tallestPx / (topMm + bottomMm),
    room / (2 * bodyHalfMm + side.width),
    (room - 2 * postNamePx) / (2 * headHalfMm + side.width),
  )
  const halfPx = Math.max(bodyHalfMm * scale, headHalfMm * scale + postNamePx)
  const spare = room - 2 * halfPx - side.width * scale
  const frontPx = namesPx + 10 + halfPx + spare / 2
  const nutPx = Math.max(topMm, -side.y) * scale + 16
  return {
    scale,
    nutPx,
    frontPx,
    sidePx: frontPx + halfPx + gapPx - side.x * scale,
    heightPx: nutPx + bottomMm * scale + 30,
    bottomMm,
  }
}

/** Bring shapes from mm about the nut line to the page. */
export function onPage(shapes: readonly Shape[], {scale, nutPx}: Frame, atPx: number): Shape[] {
  const to = ([x, y]: Point): Point => [atPx + x * scale, nutPx + y * scale]
  return shapes.map((shape) => {
    if (shape.is === 'path') return {...shape, points: shape.points.map(to)}
    if (shape.is === 'text') return {...shape, at: to(shape.at)}
    return {...shape, centre: to(shape.centre), radiusMm: shape.radiusMm * scale}
  })
}
