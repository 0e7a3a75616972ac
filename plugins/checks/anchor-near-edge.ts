import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** Anchors with too little wood out to an edge of the neck. */
export const anchorNearEdge: Check = {
  rule: 'anchor-near-edge',
  find: ({values}, {anchorRow: row, ...plan}) => {
    if (row?.edgeMm === undefined || row.edgeMm >= row.woodMm - 1e-6) return []
    const spacing = values.anchors?.spacing
    const canClose = spacing && row.widestMm !== undefined && row.widestMm >= (row.closestMm ?? 0)
    const widest = canClose ? writeLength(row.widestMm!, plan, 'down') : undefined
    const left = row.edgeMm <= 0 ? 'nothing' : `only ${writeLength(row.edgeMm, plan, 'down')}`
    return [
      {
        at: spacing ? 'anchors.spacing' : 'anchors',
        message: `the outer anchors leave ${left} of wood at the neck’s edge; keep ${writeLength(row.woodMm, plan)}${widest ? `: ${widest} between neighbours would do` : ', or take a wider neck'}`,
        ...(widest && {expected: [widest]}),
      },
    ]
  },
}
