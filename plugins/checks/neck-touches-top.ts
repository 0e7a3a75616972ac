import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A neck that runs through without daylight under a top that carries the bridge. */
export const neckTouchesTop: Check = {
  rule: 'neck-touches-top',
  find: ({values}, {box, ...plan}) => {
    const neck = box?.neck
    if (neck?.gapMm === undefined || neck.leastGapMm === undefined) return []
    if (neck.gapMm >= neck.leastGapMm - 1e-6) return []
    const expected = writeLength(25.4 / 8, plan, 'up')
    return [
      {
        at: 'box.neck-gap',
        message: `with ${values.box?.['neck-gap']?.text} of daylight the top would come down on the neck under the bridge, and not sound; cut ${expected} of daylight into the neck`,
        expected: [expected],
      },
    ]
  },
}
