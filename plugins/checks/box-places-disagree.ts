import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A box placed by box.at and by bridge.from-tail, at places that differ by more than the ruler shows. */
export const boxPlacesDisagree: Check = {
  rule: 'box-places-disagree',
  find: ({values: {box, bridge, scale}}, plan) => {
    const {atMm, atByTailMm} = plan.box ?? {}
    if (atMm === undefined || atByTailMm === undefined) return []
    if (Math.abs(atMm - atByTailMm) <= plan.rulerMm + 1e-6) return []
    const text = writeLength(atByTailMm, plan)
    return [
      {
        at: 'box.at',
        message: `box.at puts the box’s head-side edge ${box?.at?.text} from the nut, but bridge.from-tail ${bridge?.['from-tail']?.text}, on a scale of ${scale?.length?.text}, puts it at ${text}; keep one of the two, or make them agree`,
        expected: [text],
        cause: 'bridge.from-tail',
      },
    ]
  },
}
