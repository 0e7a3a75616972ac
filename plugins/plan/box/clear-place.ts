import {toMark} from '../to-mark.ts'
import type {Circle} from './gap.ts'

interface Search {
  /** The hole's path in the build file. */
  of: string
  /** The key that says how far along it stands, and where that is measured from (mm from the nut line). */
  alongKey: 'at' | 'along'
  originMm: number
  rulerMm: number
  /** How far it may move. */
  reachMm: number
  isClear: (hole: Circle) => boolean
}

/** Coarser steps where a fine ruler would make the search long. */
const mostSteps = 400

/**
 * Find what one change of a hole in the top would clear it of everything: the nearest mark of the ruler along or
 * across, or else the largest smaller diameter, as the path to change and its value in mm. Undefined where none does.
 */
export function clearPlace(hole: Circle, search: Search): {path: string; mm: number} | undefined {
  const stepMm = search.rulerMm * Math.max(1, Math.ceil(search.reachMm / search.rulerMm / mostSteps))
  const start = {along: hole.stationMm - search.originMm, across: hole.offMm}
  for (let moveMm = 0; moveMm <= search.reachMm; moveMm += stepMm)
    for (const [sign, side] of [
      [-1, 'down'],
      [1, 'up'],
    ] as const) {
      const alongMm = toMark(start.along + sign * moveMm, search.rulerMm, side)
      if (search.isClear({...hole, stationMm: search.originMm + alongMm}))
        return {path: `${search.of}.${search.alongKey}`, mm: alongMm}
      const offMm = toMark(start.across + sign * moveMm, search.rulerMm, side)
      if (search.isClear({...hole, offMm})) return {path: `${search.of}.off`, mm: offMm}
    }
  for (let diameterMm = toMark(hole.diameterMm, search.rulerMm, 'down'); diameterMm > 0; diameterMm -= stepMm)
    if (search.isClear({...hole, diameterMm})) return {path: `${search.of}.diameter`, mm: diameterMm}
  return undefined
}
