import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A sound hole where the neck runs. */
export const holeUnderNeck: Check = {
  rule: 'hole-under-neck',
  find: (_, {box, ...plan}) =>
    (box?.soundHoles ?? []).flatMap(({of, neck, wouldDo}) => {
      if (!neck || neck.gapMm >= 0) return []
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      return [
        {
          at: wouldDo?.path ?? of,
          message: `this sound hole lies ${writeLength(-neck.gapMm, plan, 'up')} ${box?.neck?.joins === 'through' ? 'over the neck that runs through under it' : 'under the neck'}${text ? `; ${wouldDo.path.split('.').at(-1)} ${text} would do` : '; move it, or make it smaller'}`,
          ...(text && {expected: [text]}),
        },
      ]
    }),
}
