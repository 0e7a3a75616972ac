import {writeForce} from '../build-file/quantities/write-force.ts'
import {breakLimits} from '../tables/string-pulls.ts'
import type {Check} from './check.ts'
import {stringCalled, stringMend} from './string-mend.ts'

/** A string that pulls too little for its material and for how it is played. */
export const stringSlack: Check = {
  rule: 'string-slack',
  find: (_, plan) =>
    (plan.strings ?? []).flatMap((string, i) => {
      const {tensionN, pull, breakFraction = 0} = string
      if (tensionN === undefined || pull !== 'slack' || breakFraction >= breakLimits.nearer) return []
      const {at, expected, does} = stringMend(string, i, plan)
      const message = `${stringCalled(string)} pulls ${writeForce(tensionN, plan.units)}, which ${plan.play === 'slide' ? 'a slide presses down to the lines' : 'is slack and buzzes'}; ${does}`
      return {at, message, ...(expected && {expected})}
    }),
}
