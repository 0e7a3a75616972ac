import type {Check} from './check.ts'
import {stockTrouble} from './stock-trouble.ts'

/** A piece or a part without one of its three sizes. */
export const sizeMissing: Check = {
  rule: 'size-missing',
  find: (_, plan) =>
    stockTrouble(plan, ['unsized'], ({id, lacks}) => ({
      message: `${id} has no ${lacks}, so it is left out of the cut list`,
    })),
}
