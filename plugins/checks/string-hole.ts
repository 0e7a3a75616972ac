import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A string hole that its string does not go through, or that its ball end does. */
export const stringHole: Check = {
  rule: 'string-hole',
  find: ({values}, {anchorRow: row, ...plan}) => {
    const hole = values.anchors?.['string-hole']
    if (!hole || !row) return []
    if (row.stringMm !== undefined && hole.mm < row.stringMm - 1e-6) {
      const least = writeLength(row.stringMm, plan, 'up')
      return [
        {
          at: 'anchors.string-hole',
          message: `a string hole of ${hole.text} is too small for the thickest string; ${least} would do`,
          expected: [least],
        },
      ]
    }
    if (row.ballMm === undefined || hole.mm < row.ballMm - 1e-6) return []
    const most = writeLength(row.ballMm - plan.rulerMm, plan, 'down')
    return [
      {
        at: 'anchors.string-hole',
        message: `a ball end slips through a string hole of ${hole.text}; ${most} holds it`,
        expected: [most],
      },
    ]
  },
}
