import type {Rect, Text} from './shape.ts'

const narrow = /[ijl.,:;'|!’·]/
const slim = /[frtI /()°-]/
const wide = /[mwMW%—–@×]/
const capital = /\p{Lu}/u

/**
 * Estimate how wide a text is at most, in mm, in the sans serif faces that screens and printers have.
 * Meant to be too wide rather than too narrow, so that what fits here fits on the page.
 */
export function textWidthMm(text: string, sizeMm: number): number {
  let ems = 0
  for (const letter of text)
    ems += narrow.test(letter)
      ? 0.32
      : slim.test(letter)
        ? 0.42
        : wide.test(letter)
          ? 1
          : capital.test(letter)
            ? 0.78
            : 0.64
  return ems * sizeMm
}

/** The rectangle that a text takes at most: from above its ascenders to below its descenders. */
export function textBox({at: [x, y], text, sizeMm, anchor, turned}: Text): Rect {
  const width = textWidthMm(text, sizeMm)
  const before = anchor === 'start' ? 0 : anchor === 'end' ? width : width / 2
  const above = 0.5 * sizeMm
  const height = 1.1 * sizeMm
  return turned
    ? {x: x - above, y: y - (width - before), width: height, height: width}
    : {x: x - before, y: y - above, width, height}
}
