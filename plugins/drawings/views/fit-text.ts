import {extent} from '../kit/extent.ts'
import type {Shape} from '../kit/shape.ts'

/** How many text heights wide a drawing may be, so that its figures stay readable at the width of a phone. */
const widest = 27

/**
 * Find the height of text, in mm, with which a drawing is neither too wide nor too tall for its figures.
 * `compose` lays it out with a given height; what is drawn itself is `bare`, and may be `tallest` text heights tall.
 */
export function fitText(
  bare: readonly Shape[],
  compose: (textMm: number) => readonly Shape[],
  tallest: number,
): number {
  const size = extent(bare)
  const trial = Math.max(size.width, size.height) / 40
  const around = (extent(compose(trial)).width - size.width) / trial
  return Math.max(size.width / Math.max(widest - around, 8), size.height / tallest)
}
