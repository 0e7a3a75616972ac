import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A jack that does not fit inside the box behind its wall. */
export const jackInside: Check = {
  rule: 'jack-inside',
  find: ({values}, {pickup, box, ...plan}) => {
    const {bodyMm, roomMm, holeMm, face} = pickup?.jack ?? {}
    const findings = []
    if (bodyMm !== undefined && roomMm !== undefined && bodyMm > roomMm + 1e-6) {
      const room = writeLength(roomMm, plan, 'down')
      findings.push({
        at: 'pickup.jack.body',
        message: `the jack reaches ${values.pickup?.jack?.body?.text} into the box, and there is ${room} behind the ${face}; take a shorter jack, or another wall`,
        expected: [room],
      })
    }
    const heightMm = box?.inside?.heightMm
    if (holeMm !== undefined && heightMm !== undefined && holeMm > heightMm + 1e-6)
      findings.push({
        at: 'pickup.jack.hole',
        message: `a hole of ${values.pickup?.jack?.hole?.text} is wider than the box is high inside, ${writeLength(heightMm, plan, 'down')}; take a smaller jack`,
      })
    return findings
  },
}
