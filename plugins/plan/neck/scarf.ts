import {inch, radians} from '../../tables/units.ts'
import type {Cutter} from '../neck-shape/cut.ts'
import type {NeckModel} from '../neck-shape/model.ts'
import {neckWidthAt} from '../neck-shape/taper.ts'
import {scarfAngleDeg} from './string-angles.ts'

/** The scarf, in mm of what is really sawn. */
export interface Scarf {
  angleDeg: number
  /** What is really sawn. */
  thicknessMm: number
  faceMm: number
  runMm: number
  /** The run for a rise of one. */
  slope: number
  /** What a mitre gauge reads that counts from square. */
  fromSquareDeg: number
  /** The flattest usual angle. */
  leastDeg: number
  /** The steepest. */
  mostDeg: number
  glueAreaMm2: number
  /** The strings’ pull along the glue line. */
  glueForceN?: number | undefined
  glueStressMpa?: number | undefined
  stringAngleDeg?: number[] | undefined
}

/**
 * Lay out the scarf, in mm, of what is really sawn (t thick, at θ): the sawn face t/sin θ, its run t/tan θ along the
 * stick, the area glued, and the pull that the glue line carries along itself (N and MPa), T·cos θ.
 * 19.05 mm at 14°: face 78.74, run 76.41. Source: trigonometry.
 */
export function planScarf(
  {head, taper}: NeckModel,
  tensionN: number | undefined,
  stringAngleDeg: number[] | undefined,
): Scarf | undefined {
  const widthMm = neckWidthAt(0, taper)
  if (head?.joint !== 'scarf' || widthMm === undefined || !(head.sawnMm > 0)) return undefined
  const leanRad = radians(head.angleDeg)
  const faceMm = head.sawnMm / Math.sin(leanRad)
  const glueAreaMm2 = faceMm * widthMm
  const glueForceN = tensionN && tensionN * Math.cos(leanRad)
  return {
    angleDeg: head.angleDeg,
    thicknessMm: head.sawnMm,
    faceMm,
    runMm: head.sawnMm / Math.tan(leanRad),
    slope: 1 / Math.tan(leanRad),
    fromSquareDeg: 90 - head.angleDeg,
    leastDeg: scarfAngleDeg.least,
    mostDeg: scarfAngleDeg.most,
    glueAreaMm2,
    glueForceN,
    glueStressMpa: glueForceN && glueForceN / glueAreaMm2,
    stringAngleDeg,
  }
}

/** The wood under the nut's groove, in mm. */
export interface NutSeat {
  grooveMm: number
  leftMm: number
  leastMm: number
  deepestMm: number
  /** What the piece of the scarf adds under it. */
  overlapMm: number
}

/** Wood to be left under the nut's groove (mm): common practice, no source. */
export const underGrooveMm = inch(3 / 8)

/**
 * Measure the wood left under the nut's groove (mm), the scarf's overlap counted: behind the place where the back
 * turns into the head, the piece glued under it adds what the head has gone down by.
 */
export function planNutSeat(
  {head}: NeckModel,
  cut: Cutter,
  grooveMm: number | undefined,
): NutSeat | undefined {
  const section = cut(0)
  if (grooveMm === undefined || !section) return undefined
  const leanRad = radians(head?.angleDeg ?? 0)
  const backTurnsMm = head ? -head.ledgeMm + head.sawnMm * Math.tan(leanRad / 2) : 0
  const overlapMm = head?.joint === 'scarf' ? Math.max(backTurnsMm, 0) * Math.tan(leanRad) : 0
  // The groove is as deep under the plane of the playing face whether or not the face reaches over it.
  const back = section.layers.at(-1)!
  const thicknessMm = back.fromFaceMm + back.thicknessMm + overlapMm
  return {
    grooveMm,
    leftMm: thicknessMm - grooveMm,
    leastMm: underGrooveMm,
    deepestMm: thicknessMm - underGrooveMm,
    overlapMm,
  }
}
