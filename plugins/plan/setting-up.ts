import {type SetupFault, setupFaults} from '../tables/setup-faults.ts'
import type {PlanPart} from './part.ts'
import {fromMeasures} from './setting-up/from-measures.ts'
import {likelyFaults} from './setting-up/likely-faults.ts'
import type {SettingUp} from './shape/work.ts'

const names = Object.keys(setupFaults) as SetupFault[]

/**
 * Say how to set it up (mm; positive: away from the nut, or down): what the measures call for, then the faults that
 * a maker meets, first those that this build's numbers make likely. Absent while it has no strings or no scale.
 */
export const settingUp: PlanPart = (settled, plan) => {
  if (!plan.strings?.length || plan.scale?.lengthMm === undefined) return {}
  const likely = likelyFaults(settled, plan)
  const faults = names
    .filter((name) => likely[name] !== undefined)
    .map((name): SettingUp => {
      const {fault, cause, cure} = setupFaults[name]
      return {find: fault, does: cure, cause, ...(likely[name] && {because: likely[name]})}
    })
  return {
    settingUp: [
      ...fromMeasures(settled, plan),
      ...faults.filter(({because}) => because),
      ...faults.filter(({because}) => !because),
    ],
  }
}
