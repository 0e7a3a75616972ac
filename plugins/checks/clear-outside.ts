import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'
import {stockTrouble} from './stock-trouble.ts'

/** A clear length that does not lie on its piece. */
export const clearOutside: Check = {
  rule: 'clear-outside',
  find: (_, plan) =>
    stockTrouble(plan, ['clear'], ({id, mm}) => ({
      message:
        mm === undefined
          ? `the clear length of ${id} ends before it starts: give the nearer end first`
          : `the clear length of ${id} ends past the piece, which is ${writeLength(mm, plan)} long`,
      ...(mm !== undefined && {expected: [writeLength(mm, plan, 'down')]}),
    })),
}
