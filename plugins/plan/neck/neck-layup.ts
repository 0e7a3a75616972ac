import type {NeckConcern} from './concern.ts'
import {planingMostMm} from './neck-layers.ts'

/** Compare what the laminations come to with the thickness they are planed to (mm). */
export const neckLayup: NeckConcern = ({model: {layup}}) => {
  const {stickMm, totalMm, laminationsMm, wantedMm} = layup
  return {
    layup: {
      stickMm,
      totalMm,
      ...(laminationsMm !== undefined && {
        laminationsMm,
        wantedMm,
        planedMm: laminationsMm - stickMm,
        overMm: laminationsMm - wantedMm,
        mostOverMm: planingMostMm,
        // What neck.thickness would have to be for these laminations.
        thicknessMm: laminationsMm + (totalMm - stickMm),
      }),
    },
  }
}
