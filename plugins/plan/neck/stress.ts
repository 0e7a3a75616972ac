import type {Cut, Cutter} from '../neck-shape/cut.ts'
import type {NeckModel} from '../neck-shape/model.ts'
import {momentAt, type StringLoad} from './string-load.ts'

/**
 * The part of a wood's modulus of rupture that it may carry for years: a third. Design values take 2.1 to 2.3 off for
 * load that stays and for safety (ASTM D245, from memory), and boards scatter by some 16 % (Wood Handbook, ch. 5).
 */
export const strengthPart = 1 / 3

/** What a stretch of the neck is worth, in N·mm² and MPa. */
export interface Stretch {
  eiNmm2?: number | undefined
  stressMpa?: number | undefined
  mayCarryMpa?: number | undefined
  bucklingMargin?: number | undefined
}

/** A stretch holds where its stress is known to stay under what its wood may carry, or that is not known of the wood. */
export const holds = ({stressMpa, mayCarryMpa}: Stretch) =>
  stressMpa !== undefined && (mayCarryMpa === undefined || stressMpa <= mayCarryMpa)

/** Say how stiff the stretch between the walls is, how hard it is stressed where it is worst, and what would buckle it. */
export function stretchOf(
  {inside, changes, tailMm}: NeckModel,
  cut: Cutter,
  load: StringLoad | undefined,
): Stretch {
  if (!inside) return {}
  const [fromMm, toMm] = [inside.clear[0], Math.min(inside.clear[1], tailMm ?? inside.clear[1])]
  if (!(toMm > fromMm)) return {}
  const places = [
    fromMm,
    (fromMm + toMm) / 2,
    toMm - 1e-6,
    ...(load ? [load.scaleMm] : []),
    ...changes.map(({stationMm}) => stationMm),
  ].filter((at) => at >= fromMm && at < toMm)
  const cuts = places.map((at) => cut(at))
  const eiNmm2 = Math.min(...cuts.map((one) => one?.values.eiNmm2 ?? Number.NaN))
  if (!load || Number.isNaN(eiNmm2)) return {eiNmm2: Number.isNaN(eiNmm2) ? undefined : eiNmm2}
  const worst = places.flatMap((at, i) => strainOf(cuts[i]!, at, load)).reduce(harder)
  return {
    eiNmm2,
    stressMpa: worst.stressMpa,
    mayCarryMpa: worst.mayCarryMpa,
    bucklingMargin: (Math.PI ** 2 * eiNmm2) / (toMm - fromMm) ** 2 / load.tensionN,
  }
}

interface Strain {
  stressMpa: number
  mayCarryMpa?: number | undefined
}

/** Of two layers the one nearer to what it may carry. */
const harder = (a: Strain, b: Strain) =>
  b.stressMpa / (b.mayCarryMpa ?? 1e3) > a.stressMpa / (a.mayCarryMpa ?? 1e3) ? b : a

/**
 * Give the stress along the grain of each layer of a section (MPa), at its face or back: E·κ·z and its share of the
 * pull, which presses the neck together. Source: Gere & Goodno, Mechanics of Materials, ch. 6.
 */
function strainOf({values, layers, widthMm}: Cut, stationMm: number, load: StringLoad): Strain[] {
  const {neutralAxisMm = 0, eiNmm2 = Number.NaN} = values
  const curved = momentAt(load, stationMm, neutralAxisMm) / eiNmm2
  const stiffness = layers.reduce((sum, {eMpa = 0, thicknessMm}) => sum + eMpa * thicknessMm * widthMm, 0)
  const pressed = load.tensionN / stiffness
  return layers.map(({eMpa = 0, morMpa, fromFaceMm, thicknessMm}) => {
    const ends = [fromFaceMm, fromFaceMm + thicknessMm].map((deep) =>
      Math.abs(eMpa * (curved * (deep - neutralAxisMm) - pressed)),
    )
    return {
      stressMpa: Math.max(...ends),
      mayCarryMpa: morMpa === undefined ? undefined : strengthPart * morMpa,
    }
  })
}
