import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'
import {howNear} from './how-near.ts'

/** A sound hole too near the neck. */
export const holeNearNeck: Check = {
  rule: 'hole-near-neck',
  find: (_, {box, ...plan}) =>
    (box?.soundHoles ?? []).flatMap(({of, neck, wouldDo}) => {
      if (!neck || neck.gapMm < 0 || neck.gapMm >= neck.needsMm - 1e-6) return []
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      return [
        {
          at: wouldDo?.path ?? of,
          message: `this sound hole’s rim ${howNear(neck.gapMm, plan)} the neck${text ? `; ${wouldDo.path.split('.').at(-1)} ${text} would do` : '; move it, or make it smaller'}`,
          ...(text && {expected: [text]}),
        },
      ]
    }),
}
