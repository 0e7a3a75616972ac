import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'
import {oneEach} from './one-each.ts'

/** A screw with too little thread in the piece that is to hold it. */
export const screwThreadShort: Check = {
  rule: 'screw-thread-short',
  find: ({values}, {fasteners = [], ...plan}) =>
    oneEach(
      fasteners.filter(({lengthMm, shortestMm}) => lengthMm < shortestMm - 1e-6),
      ({of}) => of,
      ({lengthMm, shortestMm}) => shortestMm - lengthMm,
    ).map(({of, into, threadMm, shortestMm, longestMm = shortestMm}) => {
      const shortest = writeLength(shortestMm, plan, 'up')
      const length = values.screws?.[Number(of.split('.')[1]) - 1]?.length?.text
      const found =
        threadMm <= 0
          ? `does not reach the ${into}`
          : `has ${writeLength(threadMm, plan, 'down')} of thread in the ${into}`
      const isPossible = longestMm >= shortestMm - 1e-6
      return {
        at: `${of}.length`,
        message: `a screw of ${length} ${found}, too little to hold; ${isPossible ? `${shortest} is the shortest that would do` : 'take less wood under its head'}`,
        ...(isPossible && {expected: [shortest]}),
        ...(threadMm <= 0 && {severity: 'fault' as const}),
      }
    }),
}
