import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'
import {howNear} from './how-near.ts'

/** A sound hole in a block, or too near one. */
export const holeNearBlock: Check = {
  rule: 'hole-near-block',
  find: (_, {box, ...plan}) =>
    (box?.soundHoles ?? []).flatMap(({of, block, wouldDo}) => {
      if (!block || block.gapMm >= block.needsMm - 1e-6) return []
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      return [
        {
          at: wouldDo?.path ?? of,
          message: `this sound hole ${block.gapMm < 0 ? `runs ${writeLength(-block.gapMm, plan, 'up')} into a block` : `${howNear(block.gapMm, plan)} a block`}${text ? `; ${wouldDo.path.split('.').at(-1)} ${text} would do` : '; move it, or make it smaller'}`,
          ...(text && {expected: [text]}),
          cause: block.of,
          ...(block.gapMm >= 0 && {severity: 'warning' as const}),
        },
      ]
    }),
}
