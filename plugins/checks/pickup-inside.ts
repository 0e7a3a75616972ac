import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A pickup that does not fit inside the box where it is to go. */
export const pickupInside: Check = {
  rule: 'pickup-inside',
  find: ({values}, {pickup, ...plan}) => {
    const {diameterMm, largestMm, against, under} = pickup ?? {}
    if (diameterMm === undefined || largestMm === undefined || diameterMm <= largestMm + 1e-6) return []
    const largest = largestMm > 0 ? writeLength(largestMm, plan, 'down') : undefined
    return [
      {
        at: 'pickup.diameter',
        message: `a disc of ${values.pickup?.diameter?.text}${under ? ` under the ${under}` : ''} runs into ${against}${largest ? `; ${largest} is the widest that fits there` : '; put it elsewhere'}`,
        ...(largest && {expected: [largest]}),
      },
    ]
  },
}
