/** Integrals over a stretch of depth: of a width, of width times depth, of width times depth squared. */
export type Moments = readonly [area: number, first: number, second: number]

/**
 * Integrate a circle's half chord c(v) = √(r² − v²) over v from a to b, both within ±r: ∫c, ∫c·v and ∫c·v².
 * A quarter (r 1, 0 to 1) gives π/4, 1/3 and π/16. Source: any table of integrals.
 */
export function circleMoments(r: number, a: number, b: number): Moments {
  const upTo = (v: number): Moments => {
    const c = Math.sqrt(Math.max(r * r - v * v, 0))
    const arc = Math.asin(Math.min(1, Math.max(-1, v / r)))
    return [(v * c + r * r * arc) / 2, -(c ** 3) / 3, (r ** 4 * arc - v * c * (r * r - 2 * v * v)) / 8]
  }
  const [to, from] = [upTo(b), upTo(a)]
  return [to[0] - from[0], to[1] - from[1], to[2] - from[2]]
}
