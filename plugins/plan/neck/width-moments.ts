import {circleMoments, type Moments} from './circle-moments.ts'
import {crownMoments} from './crown-moments.ts'

/** A neck's outline across: straight sides, the face flat or crowned, the two back edges rounded (all mm). */
export interface Outline {
  widthMm: number
  heightMm: number
  /** Radius of the rounded back edges; 0 where they are square. */
  roundMm: number
  /** Radius of a crowned face; left out, flat. */
  faceRadiusMm?: number
}

/**
 * Integrate the width over depth from a to b (mm from the middle of the face), exactly: [mm², mm³, mm⁴] about the
 * face. A plain 38.1 × 19.05 gives 725.8, 6,913 and 87,799.
 */
export function widthMoments(
  {widthMm, heightMm, roundMm, faceRadiusMm}: Outline,
  a: number,
  b: number,
): Moments {
  const round = Math.max(0, Math.min(roundMm, widthMm / 2, heightMm))
  const radius = faceRadiusMm !== undefined && faceRadiusMm > widthMm / 2 ? faceRadiusMm : undefined
  const crown = radius === undefined ? 0 : radius - Math.sqrt(radius * radius - (widthMm / 2) ** 2)
  const total: [number, number, number] = [0, 0, 0]
  const add = (moments: Moments, times: number) => {
    for (const i of [0, 1, 2] as const) total[i] += moments[i] * times
  }
  const within = (from: number, to: number, use: (from: number, to: number) => void) => {
    const [low, high] = [Math.max(a, from), Math.min(b, to)]
    if (high > low) use(low, high)
  }
  if (radius !== undefined) within(0, crown, (low, high) => add(crownMoments(radius, low, high), 1))
  const shoulder = Math.max(crown, heightMm - round)
  within(crown, heightMm, (low, high) => {
    const straight = Math.min(high, shoulder)
    if (straight > low) add(powers(low, straight), widthMm)
    const from = Math.max(low, shoulder)
    if (high <= from || round === 0) return
    const centre = heightMm - round
    add(powers(from, high), widthMm - 2 * round)
    add(fromDepth(circleMoments(round, from - centre, high - centre), centre), 2)
  })
  return total
}

const powers = (a: number, b: number): Moments => [b - a, (b * b - a * a) / 2, (b ** 3 - a ** 3) / 3]

/** Take moments about a circle's centre to moments about the face, the centre lying at `depth`. */
function fromDepth([m0, m1, m2]: Moments, depth: number): Moments {
  return [m0, depth * m0 + m1, depth * depth * m0 + 2 * depth * m1 + m2]
}
