import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** Anchors with too little wood out to an edge or to the tail end of the neck. */
export const anchorNearEdge: Check = {
  rule: 'anchor-near-edge',
  find: ({values}, {anchorRow: row, ...plan}) => {
    if (!row) return []
    const least = writeLength(row.woodMm, plan)
    const findings = []
    if (row.edgeMm !== undefined && row.edgeMm < row.woodMm - 1e-6) {
      const isClosable =
        row.widestMm !== undefined && row.widestMm >= (row.closestMm ?? 0) && values.anchors?.spacing
      const widest = isClosable ? writeLength(row.widestMm!, plan, 'down') : undefined
      findings.push({
        at: values.anchors?.spacing ? 'anchors.spacing' : 'anchors',
        message: `the outer anchors leave ${left(row.edgeMm, plan)} of wood at the neck’s edge; keep ${least}${widest ? `: ${widest} between neighbours would do` : ', or take a wider neck'}`,
        ...(widest && {expected: [widest]}),
      })
    }
    if (row.endMm !== undefined && row.endMm < row.woodMm - 1e-6 && values.anchors?.at) {
      const last = writeLength(row.lastStationMm!, plan, 'down')
      findings.push({
        at: 'anchors.at',
        message: `the anchors leave ${left(row.endMm, plan)} of wood at the neck’s tail end; keep ${least}: ${last} from the nut would do`,
        expected: [last],
      })
    }
    return findings
  },
}

function left(mm: number, plan: {units: 'in' | 'mm'; rulerMm: number}): string {
  return mm <= 0 ? 'nothing' : `only ${writeLength(mm, plan, 'down')}`
}
