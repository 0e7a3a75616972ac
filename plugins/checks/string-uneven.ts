import {writeForce} from '../build-file/quantities/write-force.ts'
import {breakLimits} from '../tables/string-pulls.ts'
import type {Check} from './check.ts'
import {stringCalled, stringMend} from './string-mend.ts'

/** A string that pulls far more or far less than the others of its material, where that is all that is wrong with it. */
export const stringUneven: Check = {
  rule: 'string-uneven',
  find: (_, plan) =>
    (plan.strings ?? []).flatMap((string, i) => {
      const {tensionN, pull, uneven, offMedian, breakFraction = 0} = string
      const isNamed = pull === 'slack' || pull === 'stiff' || breakFraction >= breakLimits.nearer
      if (tensionN === undefined || offMedian === undefined || !uneven || isNamed) return []
      const {at, expected, does} = stringMend(string, i, plan)
      const off = `${Math.abs(Math.round(offMedian * 100))} % ${offMedian > 0 ? 'more' : 'less'}`
      const message = `${stringCalled(string)} pulls ${writeForce(tensionN, plan.units)}, ${off} than the middle of the strings like it; ${does}`
      return {at, message, ...(expected && {expected})}
    }),
}
