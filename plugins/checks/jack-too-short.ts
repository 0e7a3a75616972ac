import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A jack whose thread does not reach through its wall with enough left for the nut. */
export const jackTooShort: Check = {
  rule: 'jack-too-short',
  find: ({values}, {pickup, ...plan}) => {
    const {threadMm, wallMm, leastThreadMm} = pickup?.jack ?? {}
    if (threadMm === undefined || wallMm === undefined || leastThreadMm === undefined) return []
    if (threadMm >= leastThreadMm - 1e-6) return []
    const thread = values.pickup?.jack?.thread?.text
    const least = writeLength(leastThreadMm, plan, 'up')
    const thinner = writeLength(Math.max(0, threadMm - (leastThreadMm - wallMm)), plan, 'down')
    return [
      {
        at: 'pickup.jack.thread',
        message: `a thread of ${thread} is too short for a wall of ${writeLength(wallMm, plan)} and the nut: ${least} would do, or counterbore the wall from inside to ${thinner}, or set the jack in a plate`,
        expected: [least],
        cause: 'box.sides',
      },
    ]
  },
}
