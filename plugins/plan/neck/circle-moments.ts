/** Integrals over a stretch of depth: of a width, of width times depth, of width times depth squared. */
export type Moments = readonly [area: number, first: number, second: number]

/**
 * Integrate a circle's half chord c(v) = √(r² − v²) over v from a to b, both within ±r: ∫c, ∫c·v and ∫c·v².
 * A quarter (r 1, 0 to 1) gives π/4, 1/3 and π/16. Source: any table of integrals.
 */
export function circleMoments(r: number, a: number, b: number): Moments {
  const [ca, cb] = [halfChord(r, a), halfChord(r, b)]
  const turn = Math.atan2(b, cb) - Math.atan2(a, ca)
  return [
    (b * cb - a * ca + r * r * turn) / 2,
    (ca * ca * ca - cb * cb * cb) / 3,
    (r * r * r * r * turn - b * cb * (r * r - 2 * b * b) + a * ca * (r * r - 2 * a * a)) / 8,
  ]
}

const halfChord = (r: number, v: number) => Math.sqrt(Math.max(r * r - v * v, 0))
