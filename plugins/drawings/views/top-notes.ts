import type {Plan} from '../../plan/shape/plan.ts'
import {handOf} from '../instrument/hand.ts'
import type {Note} from '../kit/notes.ts'
import {diameterOf, figureOf} from '../words.ts'
import {stations} from './stations.ts'

const mostHoles = 4

/** Name the places along an instrument at its left, each with its figure from the nut line. */
export function topNotes(plan: Plan, leftOf: (halfWidthMm: number) => number): Note[] {
  const places = stations(plan).map(
    ({name, stationMm, halfWidthMm}): Note => ({
      at: [leftOf(halfWidthMm), stationMm],
      name,
      ...(stationMm === 0 ? {} : {figure: figureOf(stationMm, plan)}),
    }),
  )
  return [...places, ...holeNotes(plan, leftOf)]
}

/** One note a row of equal holes; of many rows only the first and the last. */
function holeNotes(plan: Plan, leftOf: (halfWidthMm: number) => number): Note[] {
  const hand = handOf(plan)
  const rows = new Map<string, {stationMm: number; diameterMm: number; left: number; count: number}>()
  for (const {stationMm, offMm, diameterMm} of plan.box?.soundHoles ?? []) {
    const key = `${stationMm.toFixed(2)} ${diameterMm.toFixed(2)}`
    const left = -hand.x(offMm) + diameterMm / 2
    const row = rows.get(key) ?? {stationMm, diameterMm, left, count: 0}
    rows.set(key, {...row, left: Math.max(left, row.left), count: row.count + 1})
  }
  const sorted = [...rows.values()].sort((a, b) => a.stationMm - b.stationMm)
  const kept = sorted.length > mostHoles ? [sorted[0]!, sorted.at(-1)!] : sorted
  return kept.map(({stationMm, diameterMm, left, count}) => ({
    at: [leftOf(left), stationMm],
    name: `${count === 1 ? 'hole' : `${count} holes`} ${diameterOf(diameterMm, plan)}`,
    figure: figureOf(stationMm, plan),
  }))
}
