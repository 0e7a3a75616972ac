import {writeLength} from '../build-file/quantities/write-length.ts'
import {unplacedRows} from '../plan/unplaced-parts.ts'
import type {Check} from './check.ts'

/** A part that no piece of the wood at hand gives; silent where the build names no wood at all. */
export const partUnplaced: Check = {
  rule: 'part-unplaced',
  find: (_, {cuts, ...plan}) => {
    if (!cuts?.hasStock) return []
    return unplacedRows(cuts).map(({of, which, near, wouldDo}) => {
      const text = wouldDo && writeLength(wouldDo.mm, plan, 'down')
      return {
        at: wouldDo?.path ?? of,
        message: `no piece at hand gives ${which}: ${near}${text ? `; ${text} would do` : '; the cut list says what to buy'}`,
        ...(text && {expected: [text]}),
      }
    })
  },
}
