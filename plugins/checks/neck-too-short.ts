import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A stick too short for head, scale and what anchors and box need past the bridge. */
export const neckTooShort: Check = {
  rule: 'neck-too-short',
  find: ({values}, {neck, ...plan}) => {
    const {budget} = neck ?? {}
    if (budget?.spareMm === undefined || budget.spareMm >= -1e-6) return []
    const wanted = writeLength(budget.neededMm, plan, 'up')
    const short = writeLength(-budget.spareMm, plan, 'up')
    const joins = values.neck?.joins?.value ?? 'on top'
    const past = joins === 'end' ? 'the way to the box' : `what ${budget.needs} past the bridge`
    // On top it may end before the box does, as long as it holds the anchors.
    const isOnlyBox = joins === 'on top' && budget.holdsAnchors === true
    return [
      {
        at: 'neck.length',
        message: isOnlyBox
          ? `the neck ends ${short} before the box does; ${wanted} reaches to its tail edge`
          : `the neck is ${short} too short for head, scale and ${past}; ${wanted} would do`,
        expected: [wanted],
        ...(isOnlyBox && {severity: 'remark' as const}),
      },
    ]
  },
}
