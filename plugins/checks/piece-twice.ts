import type {Check} from './check.ts'
import {stockTrouble} from './stock-trouble.ts'

/** One piece of wood named twice. */
export const pieceTwice: Check = {
  rule: 'piece-twice',
  find: (_, plan) =>
    stockTrouble(plan, ['twice'], ({id, other}) => ({
      message: `${id} is named twice, and a piece can be cut once: give the other one another name, or take one out`,
      ...(other && {cause: other}),
    })),
}
