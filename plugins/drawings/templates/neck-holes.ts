import type {Plan} from '../../plan/shape/plan.ts'

/** A hole in the neck: mm from the nut line and off the centre line. */
export interface NeckHole {
  stationMm: number
  offMm: number
  diameterMm: number
  what: string
}

/** List what is drilled from the playing face, or from the back and marked here; the widest where two share a place. */
export function neckHoles({holes = []}: Plan): NeckHole[] {
  const places = new Map<string, NeckHole>()
  for (const {face, what, stationMm, offMm, diameterMm} of holes) {
    if (face !== 'playing face' && face !== 'neck back') continue
    const key = `${stationMm.toFixed(3)} ${offMm.toFixed(3)}`
    const known = places.get(key)
    if (!known || known.diameterMm < diameterMm)
      places.set(key, {stationMm, offMm, diameterMm, what: what.split(',')[0]!})
  }
  return [...places.values()].sort((a, b) => a.stationMm - b.stationMm)
}
