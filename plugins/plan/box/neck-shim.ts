import type {BuildValues} from '../../build-file/schema.ts'
import type {Box, NeckInBox} from '../shape/box.ts'

/** Size the shim (mm) of a neck on top that tilts back: it stands on a wedge as long as its seat on the box, thick at the tail end. */
export function neckShim(
  {neck}: BuildValues,
  placed: Box | undefined,
  tailMm: number | undefined,
): Partial<NeckInBox> {
  const angleDeg = neck?.angle?.deg ?? 0
  const {atMm, tailMm: boxTailMm} = placed ?? {}
  if (angleDeg === 0 || neck?.joins?.value !== 'on top' || atMm === undefined || boxTailMm === undefined)
    return {}
  const lengthMm = Math.min(tailMm ?? boxTailMm, boxTailMm) - atMm
  if (lengthMm <= 0) return {}
  return {
    shim: {angleDeg, lengthMm, thickMm: lengthMm * Math.tan((Math.abs(angleDeg) * Math.PI) / 180)},
  }
}
