import {planValue} from '../plan/plan-value.ts'
import type {Check} from './check.ts'

/** Find a value in a sentence that the plan does not have under that name; it stays as written. */
export const unknownValue: Check = {
  rule: 'unknown-value',
  find: ({references}, plan) =>
    references.flatMap(({path, place}) => {
      const found = planValue(plan, path)
      if (found.is !== 'unknown') return []
      const [meant] = found.likely
      const would = meant ? `; ${found.likely.join(', ')} would do` : ''
      const expected = found.likely.map((likely) => `:value[${likely}]`)
      return [{at: place, message: `there is no value “${path}”${would}`, ...(meant ? {expected} : {})}]
    }),
}
