import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './rule.ts'

/** An outer string so near the neck's edge that it slips off. */
export const stringNearEdge: Check = {
  rule: 'string-near-edge',
  find: (_, {neck, ...plan}) =>
    (neck?.edges?.nearEdge ?? []).map(({where, gapMm, wouldDo}) => {
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      const found = gapMm <= 0 ? 'off the neck' : `${writeLength(gapMm, plan, 'down')} from the neck’s edge`
      return {
        at: wouldDo?.path ?? 'spacing.nut',
        message: `the outer strings lie ${found} at the ${where}; ${writeLength(neck!.edges!.edgeLeastMm, plan, 'up')} keeps them from slipping off${text ? `: ${wouldDo.path} ${text} would do` : ''}`,
        ...(text && {expected: [text]}),
      }
    }),
}

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
