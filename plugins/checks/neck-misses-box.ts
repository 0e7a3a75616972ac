import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A neck said to run through the box, or to end at it, that lies wholly above its top. */
export const neckMissesBox: Check = {
  rule: 'neck-misses-box',
  find: ({values}, {box, ...plan}) => {
    const neck = box?.neck
    const said = values.neck?.['above-top']
    if (!neck || neck.joins === 'on top' || !said || neck.backBelowTopMm > 1e-6) return []
    const level = writeLength(neck.faceLevelMm, plan)
    return [
      {
        at: 'neck.above-top',
        message: `a playing face ${said.text} above the top lifts the whole neck, ${writeLength(neck.thicknessMm, plan)} thick, over the box; joins: on top, or ${level} above the top, would do`,
        expected: [level],
        cause: 'neck.joins',
      },
    ]
  },
}
