import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** Strings too close together for fingers. */
export const stringsTooClose: Check = {
  rule: 'strings-too-close',
  find: (_, {neck, ...plan}) =>
    (neck?.edges?.tooClose ?? []).map(({where, gapMm, wouldDo}) => {
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      const mend = text ? `${wouldDo.path} ${text} would do` : 'a wider neck and a wider spacing would do'
      return {
        at: wouldDo?.path ?? 'spacing.nut',
        message: `neighbouring strings are ${writeLength(gapMm, plan, 'down')} apart at the ${where}, where fingers need ${writeLength(neck!.edges!.neighbourLeastMm, plan, 'up')}; ${mend}`,
        ...(text && {expected: [text]}),
      }
    }),
}
