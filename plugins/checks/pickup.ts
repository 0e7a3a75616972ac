import * as words from '../words/findings/pickup.ts'
import {rule} from './rule.ts'

const box = 'box: {length: 10, width: 7, depth: 2, sides: 3/16, top: {held: screwed}}'

const through = 'neck: {joins: through, width: 1 5/8, thickness: 1 1/4}\n'

export const pickupRules = {
  'pickup-inside': rule({
    severity: 'fault',
    what: 'A pickup that does not fit inside the box where it is to go.',
    why: 'It would have to lie on a wall, a block or the neck.',
    mend: 'Put it elsewhere, or take a smaller one.',
    passes: `${box}\npickup: {kind: piezo, diameter: 1, along: 2, off: 2}`,
    fails: `${box}\npickup: {kind: piezo, diameter: 4, along: 2, off: 2}`,
    find: ({values}, {pickup}) => {
      const {diameterMm, largestMm, against, under} = pickup ?? {}
      if (diameterMm === undefined || largestMm === undefined || diameterMm <= largestMm + 1e-6) return []
      const diameter = values.pickup?.diameter?.text
      return [{at: 'pickup.diameter', diameter, under, against, largestMm}]
    },
    says: words.pickupInside,
  }),
  'jack-inside': rule({
    severity: 'fault',
    what: 'A jack that does not fit inside the box behind its wall.',
    why: 'It would run into the other wall, or into a neck that runs through.',
    mend: 'Take a shorter jack, or put it in another wall.',
    passes: `${through}${box}\npickup: {kind: piezo, diameter: 1, along: 2, off: 2, jack: {hole: 3/8, in: side, body: 1 1/4}}`,
    fails: `${through}${box}\npickup: {kind: piezo, diameter: 1, along: 2, off: 2, jack: {hole: 3/8, in: side, body: 3 1/4}}`,
    find: ({values}, {pickup, box}) => {
      const {bodyMm, roomMm, holeMm, face} = pickup?.jack ?? {}
      const {body, hole} = values.pickup?.jack ?? {}
      const heightMm = box?.inside?.heightMm
      const isLong = bodyMm !== undefined && roomMm !== undefined && bodyMm > roomMm + 1e-6
      const isWide = holeMm !== undefined && heightMm !== undefined && holeMm > heightMm + 1e-6
      return [
        ...(isLong ? [{at: 'pickup.jack.body', body: body?.text, roomMm, face}] : []),
        ...(isWide ? [{at: 'pickup.jack.hole', hole: hole?.text, heightMm}] : []),
      ]
    },
    says: words.jackInside,
  }),
  'jack-too-short': rule({
    severity: 'fault',
    what: 'A jack whose thread is shorter than its wall and 1/8 in.',
    why: 'The nut would find no thread. Common practice, no source.',
    mend: 'Take a longer one, counterbore the wall from inside, or set the jack in a plate.',
    passes: `${box}\npickup: {kind: piezo, jack: {hole: 3/8, in: side, thread: 3/8}}`,
    fails: `${box}\npickup: {kind: piezo, jack: {hole: 3/8, in: side, thread: 1/4}}`,
    find: ({values}, {pickup}) => {
      const {threadMm, wallMm, leastThreadMm, thickestWallMm = 0} = pickup?.jack ?? {}
      if (threadMm === undefined || wallMm === undefined || leastThreadMm === undefined) return []
      if (threadMm >= leastThreadMm - 1e-6) return []
      return [
        {
          at: 'pickup.jack.thread',
          cause: 'box.sides',
          thread: values.pickup?.jack?.thread?.text,
          wallMm,
          leastThreadMm,
          thickestWallMm,
        },
      ]
    },
    says: words.jackTooShort,
  }),
}
