import {breakLimits} from '../tables/string-pulls.ts'
import type {Check} from './check.ts'
import {stringCalled} from './string-mend.ts'

/** A steel string, or a steel core that is known, tuned near its strength or past it. */
export const stringNearBreaking: Check = {
  rule: 'string-near-breaking',
  find: (_, {strings = []}) =>
    strings.flatMap(({breakFraction, mend, ...string}, i) => {
      if (breakFraction === undefined || breakFraction < breakLimits.near) return []
      const part = `${Math.round(breakFraction * 100)} % of its strength`
      const found =
        breakFraction >= breakLimits.broken
          ? `${stringCalled(string)} breaks before it reaches ${string.note}`
          : `${stringCalled(string)} is tuned to ${part}${breakFraction >= breakLimits.nearer ? ' and will not last' : ''}`
      const severity =
        breakFraction >= breakLimits.broken
          ? 'fault'
          : breakFraction >= breakLimits.nearer
            ? 'warning'
            : 'remark'
      return {
        at: `strings.${i + 1}.note`,
        message: `${found}; ${mend?.note ?? 'a lower note'} is the highest note that keeps clear on this scale length`,
        ...(mend?.note && {expected: [mend.note]}),
        severity: severity as 'fault' | 'warning' | 'remark',
      }
    }),
}
