import {writeForce} from '../build-file/quantities/write-force.ts'
import {breakLimits} from '../tables/string-pulls.ts'
import type {Check} from './check.ts'
import {stringCalled, stringMend} from './string-mend.ts'

/** A string that pulls more than fingers, neck and box of this kind like. */
export const stringStiff: Check = {
  rule: 'string-stiff',
  find: (_, plan) =>
    (plan.strings ?? []).flatMap((string, i) => {
      const {tensionN, pull, breakFraction = 0} = string
      if (tensionN === undefined || pull !== 'stiff' || breakFraction >= breakLimits.nearer) return []
      const {at, expected, does} = stringMend(string, i, plan)
      const message = `${stringCalled(string)} pulls ${writeForce(tensionN, plan.units)}, which is stiff; ${does}`
      return {at, message, ...(expected && {expected})}
    }),
}
