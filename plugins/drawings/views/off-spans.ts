import type {Plan} from '../../plan/shape/plan.ts'
import type {Hand} from '../instrument/hand.ts'
import type {Span} from '../kit/lanes.ts'
import {figureOf} from '../words.ts'

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
