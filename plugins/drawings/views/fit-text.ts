import {extent} from '../kit/extent.ts'
import type {Shape} from '../kit/shape.ts'

/** How many text heights wide a drawing may be, so that its figures stay readable at the width of a phone. */
const widest = 27
/** How many text heights tall it may be, so that it stays on a screen. */
const tallest = 58

/**
 * Find the height of text, in mm, with which a drawing is neither too wide nor too tall for its figures.
 * `compose` lays it out with a given height; what is drawn itself is `bare`.
 */
export function fitText(bare: readonly Shape[], compose: (textMm: number) => readonly Shape[]): number {
  const size = extent(bare)
  const trial = Math.max(size.width, size.height) / 40
  const around = (extent(compose(trial)).width - size.width) / trial
  return Math.max(size.width / Math.max(widest - around, 8), size.height / tallest)
}
