import type {Check} from './check.ts'
import {stockTrouble} from './stock-trouble.ts'

/** Wood taken from the rack by a build that has no starting date. */
export const needsStarted: Check = {
  rule: 'needs-started',
  find: (_, plan) =>
    stockTrouble(plan, ['undated'], ({id}) => ({
      message: `${id} is taken from the rack, but this build has no date: give started, since builds take their wood in that order`,
    })),
}
