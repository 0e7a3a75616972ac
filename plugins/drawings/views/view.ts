import type {Plan} from '../../plan/plan.ts'
import type {Hand} from '../instrument/hand.ts'
import type {Span} from '../kit/dimensions.ts'
import {extent} from '../kit/extent.ts'
import type {Drawing, Shape, Text} from '../kit/shapes.ts'
import {figureOf} from '../words.ts'

/** Frame what was laid out, with a margin of half a line of text. */
export function view(
  plan: Plan,
  {name, title, says}: {name: string; title: string; says: string},
  shapes: readonly Shape[],
  textMm: number,
): Drawing {
  return {
    name,
    title: plan.title ? `${plan.title}: ${title}` : title,
    says,
    textMm,
    shapes,
    frame: extent(shapes, textMm / 2),
  }
}

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

interface Hole {
  stationMm: number
  offMm: number
  diameterMm: number
}

/**
 * Dimension how far holes stand off the centre line, each distance once, from the lowest hole that has it; none where
 * there are more distances than `most`. The centre line's extension starts at `edgeMm` down the page.
 */
export function offSpans(
  holes: readonly Hole[],
  hand: Hand,
  plan: Plan,
  edgeMm: number,
  most: number,
): Span[] {
  const rows = new Map<string, Span>()
  for (const {stationMm, offMm, diameterMm} of holes) {
    const toEdge = stationMm + diameterMm / 2
    const key = Math.abs(offMm).toFixed(2)
    if (Math.abs(offMm) < 0.01 || toEdge <= (rows.get(key)?.toEdge ?? Number.NEGATIVE_INFINITY)) continue
    const figure = figureOf(Math.abs(offMm), plan)
    rows.set(key, {from: 0, to: hand.x(offMm), fromEdge: edgeMm, toEdge, figure})
  }
  return rows.size > most ? [] : [...rows.values()]
}

/** Write which side is the bass and which the treble, at the two ends of a width, in mm. */
export function bassAndTreble({bass}: Hand, halfMm: number, y: number, sizeMm: number): Text[] {
  const word = (text: string, side: number): Text => ({
    is: 'text',
    ink: 'name',
    at: [side * halfMm, y],
    text,
    sizeMm,
    anchor: side < 0 ? 'start' : 'end',
  })
  return [word('bass', bass), word('treble', -bass)]
}
