import {writeLength} from '../build-file/quantities/write-length.ts'
import {rule} from './rule.ts'

export const spacingRules = {
  'string-near-edge': rule({
    severity: 'warning',
    what: 'An outer string within 3/32 in of the neck’s edge.',
    why: 'It slips off the edge when it is pressed or bent.',
    mend: 'Narrow the spacing, or widen the neck.',
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
  }),
  'strings-too-close': rule({
    severity: 'warning',
    what: 'Strings closer than 1/4 in where fingers go between them.',
    why: 'A finger on one string touches the next.',
    mend: 'Widen the spacing at the nut.',
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
  }),
}
