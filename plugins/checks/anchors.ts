import {writeLength} from '../build-file/quantities/write-length.ts'
import {rule} from './rule.ts'

export const anchorRules = {
  'anchor-near-edge': rule({
    severity: 'warning',
    what: 'Anchors with less than 1/16 in of wood out to an edge of the neck.',
    why: 'The wood splits when the hole is bored, or later under the pull. Common practice, no source.',
    mend: 'Bring them closer together, or take a wider neck.',
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
  }),
  'anchors-crowded': rule({
    severity: 'fault',
    what: 'Anchors that leave less than 1/16 in of wood between neighbours.',
    why: 'The holes would run into each other, or the wood between them break out. Common practice, no source.',
    mend: 'Space them wider, or take smaller ones.',
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
  }),
  'string-hole': rule({
    severity: 'fault',
    what: 'A string hole too small for its string, or too large for its ball end.',
    why: 'The string could not be put on, or would pull through.',
    mend: 'Bore the hole to suit the strings.',
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
  }),
}
