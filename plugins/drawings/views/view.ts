import type {Side} from '../../plan/kit/sides.ts'
import {inBrackets} from '../../words/drawings/labels.ts'
import {bareLength} from '../../words/lengths.ts'
import {sideWords} from '../../words/sides.ts'
import {type Instrument, outwards, type Place} from '../instrument/instrument.ts'
import type {Span} from '../kit/dimensions.ts'
import {extent} from '../kit/extent.ts'
import {label, type Shape, type Text} from '../kit/shapes.ts'

/** One way to look at an instrument. */
export interface View {
  /** Draw what is seen of the instrument, without words and dimensions; nothing where its inputs are missing. */
  bare: (instrument: Instrument) => Shape[]
  /** Lay words and dimensions round what was drawn, for text so many mm high; returns both, in order of drawing. */
  compose: (instrument: Instrument, drawn: readonly Shape[], textMm: number) => Shape[]
  /** Say what it shows. */
  says: (instrument: Instrument) => string
  /** How tall what is drawn may be, in text heights, so that it keeps to a part of a screen. */
  tallest: number
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

/**
 * Dimension how far holes stand off the centre line, each distance once, from the lowest hole that has it; none where
 * there are more distances than `most`. The centre line's extension starts at `edgeMm` down the page.
 */
export function offSpans(
  {x, plan}: Instrument,
  holes: readonly (Place & {diameterMm: number; proposed?: true | undefined})[],
  {edgeMm, most}: {edgeMm: number; most: number},
): Span[] {
  const rows = new Map<string, Span>()
  for (const {stationMm, offMm, diameterMm, proposed} of holes) {
    const toEdge = stationMm + diameterMm / 2
    const key = Math.abs(offMm).toFixed(2)
    if (Math.abs(offMm) < 0.01 || toEdge <= (rows.get(key)?.toEdge ?? Number.NEGATIVE_INFINITY)) continue
    const figure = inBrackets(bareLength(Math.abs(offMm), plan), proposed)
    rows.set(key, {from: 0, to: x(offMm), fromEdge: edgeMm, toEdge, figure})
  }
  return rows.size > most ? [] : [...rows.values()]
}

/** Write which side is the bass and which the treble, at the two ends of a width, in mm. */
export function bassAndTreble(
  instrument: Pick<Instrument, 'bass'>,
  halfMm: number,
  y: number,
  sizeMm: number,
): Text[] {
  return (['bass', 'treble'] as const).map((side: Side) => {
    const out = outwards(instrument, side)
    return label(sideWords[side], [out * halfMm, y], sizeMm, {ink: 'name', anchor: out < 0 ? 'start' : 'end'})
  })
}
