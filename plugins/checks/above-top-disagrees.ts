import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A neck on top whose thickness and above-top put the playing face at two heights, by more than the ruler shows. */
export const aboveTopDisagrees: Check = {
  rule: 'above-top-disagrees',
  find: ({values: {neck, box}}, plan) => {
    const {aboveTopMm, faceByThicknessMm} = plan.box?.neck ?? {}
    if (aboveTopMm === undefined || faceByThicknessMm === undefined) return []
    if (Math.abs(aboveTopMm - faceByThicknessMm) <= plan.rulerMm + 1e-6) return []
    const thickness = neck?.thickness?.text ?? 'the laminations’ sum'
    const letIn = box?.notch?.depth ? `, let in by ${box.notch.depth.text},` : ''
    const text = writeLength(faceByThicknessMm, plan)
    return [
      {
        at: 'neck.above-top',
        message: `neck.above-top says ${neck?.['above-top']?.text}, but a neck of thickness ${thickness}${letIn} on top puts its playing face ${text} above it`,
        ...(faceByThicknessMm > 0 && {expected: [text]}),
        cause: neck?.thickness ? 'neck.thickness' : 'neck.laminations',
      },
    ]
  },
}
