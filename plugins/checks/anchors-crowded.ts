import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** Anchors whose bodies leave too little wood between neighbours. */
export const anchorsCrowded: Check = {
  rule: 'anchors-crowded',
  find: ({values}, {anchorRow: row, ...plan}) => {
    if (row?.betweenMm === undefined || row.betweenMm >= row.woodMm - 1e-6) return []
    const closest = writeLength(row.closestMm!, plan, 'up')
    return [
      {
        at: 'anchors.spacing',
        message: `anchors ${writeLength(row.bodyMm, plan)} across, ${values.anchors?.spacing?.text} apart, ${row.betweenMm < 0 ? 'run into each other' : 'leave hardly any wood between them'}; ${closest} between neighbours would do`,
        expected: [closest],
      },
    ]
  },
}
