import type {StringPlan} from '../plan/shape/strings.ts'
import {breakLimits} from '../tables/string-pulls.ts'
import type {Check} from './check.ts'
import {stringCalled} from './string-mend.ts'

/** A steel string, or a steel core that is known, tuned near its strength or past it. */
export const stringNearBreaking: Check = {
  rule: 'string-near-breaking',
  find: (_, {strings = []}) =>
    strings.flatMap((string, i) => {
      const {breakFraction, note} = string
      if (breakFraction === undefined || breakFraction < breakLimits.near) return []
      const severity = severityOf(breakFraction)
      const found =
        severity === 'fault'
          ? `breaks before it reaches ${note}`
          : `is tuned to ${Math.round(breakFraction * 100)} % of its strength${severity === 'warning' ? ' and will not last' : ''}`
      const {at, does, expected} = breakMend(string, i)
      return {at, severity, message: `${stringCalled(string)} ${found}; ${does}`, ...(expected && {expected})}
    }),
}

function severityOf(breakFraction: number): 'fault' | 'warning' | 'remark' {
  if (breakFraction >= breakLimits.broken) return 'fault'
  return breakFraction >= breakLimits.nearer ? 'warning' : 'remark'
}

/** A wound string has its weight from the wrap, so a lighter one spares the core; a plain one only a lower note. */
function breakMend({wound, alternatives, mend}: StringPlan, i: number) {
  if (wound && alternatives) {
    const gauges = alternatives.map(({gauge}) => gauge)
    return {at: `strings.${i + 1}.gauge`, does: `${gauges.join(', ')} would spare its core`, expected: gauges}
  }
  return {
    at: `strings.${i + 1}.note`,
    does: `${mend?.note ?? 'a lower note'} is the highest note that keeps clear on this scale length`,
    ...(mend?.note && {expected: [mend.note]}),
  }
}
