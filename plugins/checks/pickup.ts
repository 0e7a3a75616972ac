import {writeLength} from '../build-file/quantities/write-length.ts'
import {rule} from './rule.ts'

export const pickupRules = {
  'pickup-inside': rule({
    severity: 'fault',
    what: 'A pickup that does not fit inside the box where it is to go.',
    why: 'It would have to lie on a wall, a block or the neck.',
    mend: 'Put it elsewhere, or take a smaller one.',
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
  }),
  'jack-inside': rule({
    severity: 'fault',
    what: 'A jack that does not fit inside the box behind its wall.',
    why: 'It would run into the other wall, or into a neck that runs through.',
    mend: 'Take a shorter jack, or put it in another wall.',
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
  }),
  'jack-too-short': rule({
    severity: 'fault',
    what: 'A jack whose thread is shorter than its wall and 1/8 in.',
    why: 'The nut would find no thread. Common practice, no source.',
    mend: 'Take a longer one, counterbore the wall from inside, or set the jack in a plate.',
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
  }),
}
