import * as words from '../words/findings/spacing.ts'
import {rule} from './rule.ts'

export const spacingRules = {
  'string-near-edge': rule({
    severity: 'warning',
    what: 'An outer string within 3/32 in of the neck’s edge.',
    why: 'It slips off the edge when it is pressed or bent.',
    mend: 'Narrow the spacing, or widen the neck.',
    passes: 'spacing: {nut: 1, bridge: 1}\nneck: {width: 1 5/8, thickness: 3/4}',
    fails: 'spacing: {nut: 1 1/2, bridge: 1}\nneck: {width: 1 5/8, thickness: 3/4}',
    find: (_, {neck}) =>
      (neck?.edges?.nearEdge ?? []).map((one) => ({
        ...one,
        at: one.wouldDo?.path ?? 'spacing.nut',
        needsMm: neck!.edges!.edgeLeastMm,
      })),
    says: words.stringNearEdge,
  }),
  'strings-too-close': rule({
    severity: 'warning',
    what: 'Strings closer than 1/4 in where fingers go between them.',
    why: 'A finger on one string touches the next.',
    mend: 'Widen the spacing at the nut.',
    passes: 'play: fingers\nspacing: {nut: 1}',
    fails: 'play: fingers\nspacing: {nut: 3/8}',
    find: (_, {neck}) =>
      (neck?.edges?.tooClose ?? []).map((one) => ({
        ...one,
        at: one.wouldDo?.path ?? 'spacing.nut',
        needsMm: neck!.edges!.neighbourLeastMm,
      })),
    says: words.stringsTooClose,
  }),
}
