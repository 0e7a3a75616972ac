import {keysMissingFor} from '../plan/keys-missing-for.ts'
import {planValue} from '../plan/plan-value.ts'
import type {Check} from './check.ts'

/** Find a value in a sentence that is not computed yet; the page prints it as open. */
export const openValue: Check = {
  rule: 'open-value',
  find: (build, plan) =>
    build.references.flatMap(({path, place}) => {
      const found = planValue(plan, path)
      if (found.is !== 'open') return []
      const [key] = keysMissingFor(found.pattern, build)
      const why = key ? `; it needs ${key}` : ''
      return [{at: place, message: `“${path}” is not known yet, and reads “open” on the page${why}`}]
    }),
}
