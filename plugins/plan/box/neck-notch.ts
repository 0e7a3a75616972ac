import type {BuildValues} from '../../build-file/schema.ts'
import type {Box, NeckInBox} from '../shape/box.ts'

/** What must be left of a wall under a notch (mm): common practice, no source. */
const wallLeftMm = 25.4 / 8
/**
 * Size the notch for the neck (mm): the file's, or where a neck runs through the one that its walls need, with what
 * it leaves of the wall.
 */
export function neckNotch(
  {neck, box}: BuildValues,
  placed: Box | undefined,
  {widthMm, aboveTopMm, thicknessMm}: {widthMm: number; aboveTopMm: number; thicknessMm: number},
): Partial<NeckInBox> {
  const given = box?.notch
  const isGiven = given?.depth !== undefined
  const isNeeded = neck?.joins?.value === 'through' && thicknessMm > aboveTopMm
  const depthMm = given?.depth?.mm ?? (isNeeded ? thicknessMm - aboveTopMm : undefined)
  if (depthMm === undefined) return {}
  const wallMm = placed?.outside && placed.outside.depthMm - placed.outside.backMm
  return {
    notch: {
      widthMm: given?.width?.mm ?? widthMm,
      depthMm,
      isGiven,
      ...(placed?.outside && {besideMm: (placed.outside.widthMm - (given?.width?.mm ?? widthMm)) / 2}),
      ...(wallMm !== undefined && {leftMm: wallMm - depthMm, deepestMm: wallMm - wallLeftMm}),
    },
  }
}
