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
