import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'
import {howNear} from './how-near.ts'

/** Two sound holes with too little wood between them. */
export const holesClose: Check = {
  rule: 'holes-close',
  find: (_, {box, ...plan}) =>
    (box?.soundHoles ?? []).flatMap(({of, earlier, wouldDo}) => {
      if (!earlier || earlier.gapMm >= earlier.needsMm - 1e-6) return []
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      return [
        {
          at: wouldDo?.path ?? of,
          message: `this sound hole ${earlier.gapMm < 0 ? 'runs into another' : `${howNear(earlier.gapMm, plan)} another`}; ${writeLength(earlier.needsMm, plan)} keeps the wood between them whole${text ? `; ${wouldDo.path.split('.').at(-1)} ${text} would do` : '; move it, or make it smaller'}`,
          ...(text && {expected: [text]}),
          cause: earlier.of,
          ...(earlier.gapMm >= 0 && {severity: 'warning' as const}),
        },
      ]
    }),
}
