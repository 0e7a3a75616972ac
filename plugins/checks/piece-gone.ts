import type {Check} from './check.ts'
import {stockTrouble} from './stock-trouble.ts'

/** A piece taken after another build has cut it, or before it was there. */
export const pieceGone: Check = {
  rule: 'piece-gone',
  find: (_, plan) =>
    stockTrouble(plan, ['cut', 'later'], ({kind, id, by, on}) => ({
      message:
        kind === 'cut'
          ? `${id} was cut before, for ${by}: take another piece, or one of its offcuts`
          : on
            ? `${id} came into the shop on ${on}, after this build was started`
            : `${id} is an offcut that is not there yet when this build is started`,
    })),
}
