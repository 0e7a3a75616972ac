import type {Check} from './check.ts'
import {stockTrouble} from './stock-trouble.ts'

/** A piece taken that was never on the rack. */
export const pieceUnknown: Check = {
  rule: 'piece-unknown',
  find: (_, plan) =>
    stockTrouble(plan, ['unknown'], ({id, nearest}) => ({
      message: `there is no ${id} on the rack${nearest ? `; ${nearest} may be meant` : '; list it in rack.yaml, or under stock'}`,
      ...(nearest && {expected: [nearest]}),
    })),
}
