import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A sound hole over a wall of the box, or too near one. */
export const holeNearEdge: Check = {
  rule: 'hole-near-edge',
  find: (_, {box, ...plan}) =>
    (box?.soundHoles ?? []).flatMap(({of, edge, wouldDo}) => {
      if (!edge || edge.gapMm >= edge.needsMm - 1e-6) return []
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      return [
        {
          at: wouldDo?.path ?? of,
          message: `this sound hole’s rim is ${edge.gapMm < 0 ? 'past the box’s edge' : `${writeLength(edge.gapMm, plan, 'down')} from the box’s edge`}, where ${writeLength(edge.needsMm, plan)} keeps it clear of the wall${text ? `; ${wouldDo.path.split('.').at(-1)} ${text} would do` : '; move it, or make it smaller'}`,
          ...(text && {expected: [text]}),
          ...(edge.gapMm >= (box?.outside?.sidesMm ?? 0) && {severity: 'warning' as const}),
        },
      ]
    }),
}
