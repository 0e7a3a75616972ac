import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A sound hole under the foot of a bridge that stands on the top. */
export const bridgeOverHole: Check = {
  rule: 'bridge-over-hole',
  find: (_, {box, ...plan}) =>
    (box?.soundHoles ?? []).flatMap(({of, bridge, wouldDo}) => {
      if (!bridge || bridge.gapMm >= -1e-6) return []
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      return [
        {
          at: wouldDo?.path ?? of,
          message: `the bridge’s foot stands over this sound hole, by ${writeLength(-bridge.gapMm, plan, 'up')}${text ? `; ${wouldDo.path.split('.').at(-1)} ${text} would do` : '; move one of them'}`,
          ...(text && {expected: [text]}),
        },
      ]
    }),
}
