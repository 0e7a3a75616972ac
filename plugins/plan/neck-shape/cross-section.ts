/** A layer of a section: between two depths (mm) from the face, its stiffness and density where they are known. */
export interface CrossSectionLayer {
  fromFaceMm: number
  thicknessMm: number
  eMpa?: number | undefined
  densityKgM3?: number | undefined
}

export interface CrossSectionValues {
  areaMm2: number
  /** From the playing face; absent where layers of unknown stiffness lie on one another. */
  neutralAxisMm?: number
  eiNmm2?: number
  massPerLengthKgM?: number
}

/**
 * Give a laminated section's area, neutral axis, stiffness in bending EI (N·mm²) and mass per length, each layer
 * within the outline: every layer counts by its own E (transformed section).
 * Maple, walnut, maple of 6.35 mm each, 38 mm wide: axis at 9.525 mm, EI 2.750·10⁸.
 * Source: Gere & Goodno, Mechanics of Materials, ch. 6.
 */
export function crossSection(outline: Outline, layers: readonly CrossSectionLayer[]): CrossSectionValues {
  let [areaMm2, first, mass, ea, es, ei] = [0, 0, 0, 0, 0, 0]
  for (const {fromFaceMm, thicknessMm, eMpa = Number.NaN, densityKgM3 = Number.NaN} of layers) {
    const [m0, m1, m2] = widthMoments(outline, fromFaceMm, fromFaceMm + thicknessMm)
    areaMm2 += m0
    first += m1
    mass += m0 * densityKgM3 * 1e-6
    ea += eMpa * m0
    es += eMpa * m1
    ei += eMpa * m2
  }
  const values: CrossSectionValues = {areaMm2}
  if (ea > 0) {
    values.neutralAxisMm = es / ea
    values.eiNmm2 = ei - es * values.neutralAxisMm
  } else if (layers.length === 1 && areaMm2 > 0) values.neutralAxisMm = first / areaMm2
  if (!Number.isNaN(mass)) values.massPerLengthKgM = mass
  return values
}

/** A neck's outline across: straight sides, the face flat or crowned, the two back edges rounded (all mm). */
export interface Outline {
  widthMm: number
  heightMm: number
  /** Radius of the rounded back edges; 0 where they are square. */
  roundMm: number
  /** Radius of a crowned face; left out, flat. */
  faceRadiusMm?: number | undefined
}

/**
 * Integrate the width over depth from a to b (mm from the middle of the face), exactly: [mm², mm³, mm⁴] about the
 * face. A plain 38.1 × 19.05 gives 725.8, 6,913 and 87,799.
 */
export function widthMoments(
  {widthMm, heightMm, roundMm, faceRadiusMm = 0}: Outline,
  a: number,
  b: number,
): Moments {
  const round = Math.max(0, Math.min(roundMm, widthMm / 2, heightMm))
  const isCrowned = faceRadiusMm > widthMm / 2
  const crown = isCrowned
    ? faceRadiusMm - Math.sqrt(faceRadiusMm * faceRadiusMm - (widthMm * widthMm) / 4)
    : 0
  const shoulder = Math.max(crown, heightMm - round)
  const straight = powers(Math.max(a, crown), Math.min(b, shoulder), widthMm)
  if (a >= crown && b <= shoulder) return straight
  const face = a < crown ? crownMoments(faceRadiusMm, Math.max(a, 0), Math.min(b, crown)) : none
  const back =
    b > shoulder ? rounded(Math.max(a, shoulder), Math.min(b, heightMm), {widthMm, heightMm, round}) : none
  return [straight[0] + face[0] + back[0], straight[1] + face[1] + back[1], straight[2] + face[2] + back[2]]
}

const none: Moments = [0, 0, 0]

function powers(a: number, b: number, width: number): Moments {
  if (b <= a) return none
  return [width * (b - a), (width * (b * b - a * a)) / 2, (width * (b * b * b - a * a * a)) / 3]
}

/** The part of the back where its edges are rounded: a plain middle, and two quarters of a circle beside it. */
function rounded(
  a: number,
  b: number,
  {widthMm, heightMm, round}: {widthMm: number; heightMm: number; round: number},
): Moments {
  if (b <= a || round === 0) return none
  const centre = heightMm - round
  const middle = powers(a, b, widthMm - 2 * round)
  const [m0, m1, m2] = circleMoments(round, a - centre, b - centre)
  return [
    middle[0] + 2 * m0,
    middle[1] + 2 * (centre * m0 + m1),
    middle[2] + 2 * (centre * centre * m0 + 2 * centre * m1 + m2),
  ]
}

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

/** Gauss and Legendre's nodes and weights for six points on −1 to 1. Source: any table of quadrature. */
const points = [
  [0.2386191860831969, 0.467913934572691],
  [0.6612093864662645, 0.3607615730481386],
  [0.9324695142031521, 0.1713244923791704],
].flatMap(([node = 0, weight = 0]) => [[node, weight] as const, [-node, weight] as const])

/**
 * Integrate the width of a face crowned to a radius over depth from a to b (mm under its middle): [mm², mm³, mm⁴].
 * Taken over the angle from the middle, since a shallow crown on a large radius leaves few digits otherwise.
 */
export function crownMoments(radius: number, a: number, b: number): Moments {
  const angle = (depth: number) => 2 * Math.asin(Math.sqrt(Math.min(1, Math.max(0, depth / (2 * radius)))))
  const [from, to] = [angle(a), angle(b)]
  const total: [number, number, number] = [0, 0, 0]
  for (const [node, weight] of points) {
    const turn = (from + to) / 2 + ((to - from) / 2) * node
    const depth = 2 * radius * Math.sin(turn / 2) ** 2
    const strip = weight * ((to - from) / 2) * 2 * radius * radius * Math.sin(turn) ** 2
    for (const power of [0, 1, 2] as const) total[power] += strip * depth ** power
  }
  return total
}
