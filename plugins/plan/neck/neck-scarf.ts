import {neckWidthAt} from '../neck-width-at.ts'
import type {NeckConcern} from './concern.ts'
import {scarfAngleDeg} from './string-angles.ts'

/**
 * Lay out the scarf, in mm, of what is really sawn (t thick, at θ): the sawn face t/sin θ, its run t/tan θ along the
 * stick, the area glued, and the pull that the glue line carries along itself (N and MPa), T·cos θ.
 * 19.05 mm at 14°: face 78.74, run 76.41. Source: trigonometry.
 */
export const neckScarf: NeckConcern = ({model, soFar, neck}) => {
  const {head, taper} = model
  const widthMm = neckWidthAt(0, taper)
  if (head?.joint !== 'scarf' || widthMm === undefined || !(head.sawnMm > 0)) return {}
  const leanRad = (head.angleDeg * Math.PI) / 180
  const faceMm = head.sawnMm / Math.sin(leanRad)
  const glueAreaMm2 = faceMm * widthMm
  const glueForceN = soFar.tensionTotalN && soFar.tensionTotalN * Math.cos(leanRad)
  return {
    scarf: {
      angleDeg: head.angleDeg,
      thicknessMm: head.sawnMm,
      faceMm,
      runMm: head.sawnMm / Math.tan(leanRad),
      slope: 1 / Math.tan(leanRad),
      fromSquareDeg: 90 - head.angleDeg,
      leastDeg: scarfAngleDeg.least,
      mostDeg: scarfAngleDeg.most,
      glueAreaMm2,
      ...(glueForceN !== undefined && {glueForceN, glueStressMpa: glueForceN / glueAreaMm2}),
      ...(neck.stringAngleDeg && {stringAngleDeg: neck.stringAngleDeg}),
    },
  }
}
