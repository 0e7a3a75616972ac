import {type Bent, bend, type Curvature, distinctPlaces} from '../neck-shape/bend.ts'
import type {Cutter} from '../neck-shape/cut.ts'
import type {NeckModel} from '../neck-shape/model.ts'
import {momentAt, type StringLoad} from './string-load.ts'

/** Compare the pull with what would buckle a straight column of this length: π²·EI/L². Source: Euler's column. */
export function bucklingMargin(cut: Cutter, lengthMm: number, tensionN: number): number | undefined {
  const stiffness = [0, lengthMm / 2].map((at) => cut(at)?.values.eiNmm2 ?? Number.NaN)
  const margin = (Math.PI ** 2 * Math.min(...stiffness)) / lengthMm ** 2 / tensionN
  return Number.isFinite(margin) ? margin : undefined
}

/**
 * Bend the neck: the curvature is the moment of the strings and of the box's walls over EI. Past `stiffFromMm` it is
 * held straight. The line of the strings ends at the bridge: on the neck, or where a top that both walls carry stands.
 * Undefined where its stiffness is not known.
 */
export function strungNeck(
  {tailMm, inside, changes}: NeckModel,
  cut: Cutter,
  load: StringLoad,
  stiffFromMm: number,
): Bent | undefined {
  const {scaleMm} = load
  const lastMm = Math.max(inside?.wallsMm[1] ?? 0, scaleMm)
  const endMm = Math.min(stiffFromMm, tailMm ?? lastMm, lastMm)
  const curvature: Curvature = (stationMm) => {
    if (stationMm >= endMm) return 0
    const {eiNmm2 = 0, neutralAxisMm = 0} = cut(stationMm)?.values ?? {}
    return eiNmm2 > 0 ? momentAt(load, stationMm, neutralAxisMm) / eiNmm2 : Number.NaN
  }
  const walls = inside?.wallsMm ?? []
  const breaks = [0, scaleMm / 2, endMm, scaleMm, ...walls, ...changes.map(({stationMm}) => stationMm)]
  const places = distinctPlaces(breaks.filter((at) => at >= 0 && at <= lastMm))
  const bent = bend(curvature, places, load.push && {atMm: scaleMm, carriedMm: load.push.wallsMm})
  return Number.isFinite(bent.reliefMm) ? bent : undefined
}
